using System.Text.Json;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Entries;

/// <summary>The kind <c>dossier</c>: the first entry of every dossier.</summary>
public sealed class DossierKind : EvidenceKind<DossierOpened>
{
    /// <summary>The word in <c>"kind"</c>.</summary>
    public const string Word = "dossier";

    /// <inheritdoc/>
    public override string Name => Word;

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.Decision;

    /// <inheritdoc/>
    public override string Room => "all rooms";

    /// <inheritdoc/>
    public override string Says => "Begins a dossier, or gives it another title.";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys =>
    [
        new("title", "text", false, "the dossier's name in words"),
        new("notice", "text", false, "a line shown on every page, such as that all of it is invented"),
    ];

    /// <inheritdoc/>
    public override Outcome<DossierOpened> Read(JsonElement payload, int version)
    {
        var read = new PayloadReader(payload);
        var title = read.OptionalText("title") ?? "";
        var notice = read.OptionalText("notice", 400) ?? "";
        return read.Done(() => new DossierOpened(title, notice));
    }
}
