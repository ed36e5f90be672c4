using Lidoff.Catalogue.Packages;
using Lidoff.Catalogue.Parts;
using Lidoff.Catalogue.Tables;

namespace Lidoff.Catalogue.Joining;

/// <summary>The rows of one folded name, with what the variant rule asks of them worked out once.</summary>
internal sealed class RowGroup(string fold, string name)
{
    public string Fold { get; } = fold;

    /// <summary>The spelling of the first row.</summary>
    public string Name { get; } = name;

    public List<CatalogueRow> Rows { get; } = [];

    /// <summary>On a base: its rows and those of every variant joined so far.</summary>
    public List<CatalogueRow> Family => family ??= [.. Rows];

    /// <summary>The group it is an orderable variant of, null for a base part.</summary>
    public RowGroup? Base { get; set; }

    public IReadOnlyList<PackageFact> Packages => packages ??= [.. Rows.SelectMany(PackageFacts.Of)];

    public string Kind => kind ??= Rows.Select(r => KindWords.Of(r.Class)).FirstOrDefault(k => k.Length > 0) ?? "";

    private IReadOnlyList<PackageFact>? packages;
    private string? kind;
    private List<CatalogueRow>? family;

    public RowGroup Root()
    {
        var at = this;
        while (at.Base is { } next) at = next;
        return at;
    }
}
