using Lidoff.Catalogue.Parts;
using Lidoff.Naming.Asking;

namespace Lidoff.Naming.Factors;

/// <summary>The package family word. People take neighbouring families for each other: lands for leads, balls for dice.</summary>
public sealed class PackageFactor : OutlineFactor
{
    // Families that a look from above or a person's habit does not tell apart. Common practice, no source.
    private static readonly string[][] Neighbours =
        [["QFN", "DFN", "LGA"], ["BGA", "WLCSP", "LGA"], ["WLCSP", "die"], ["SOIC", "SSOP", "TSSOP"], ["SOT", "SC70"], ["LGA", "module"], ["chip", "DFN"], ["can", "chip"]];

    /// <inheritdoc/>
    public override string Evidence => "package";

    /// <inheritdoc/>
    public override int Order => 20;

    /// <inheritdoc/>
    public override double BlunderRate => 0.03;

    /// <inheritdoc/>
    public override bool Speaks(NameEvidence evidence) => evidence.Package is not null;

    internal override double? Likelihood(NameEvidence evidence, PackageFact outline)
    {
        if (outline.Family.Length == 0) return null;
        var word = evidence.Package!;
        if (outline.Family.Equals(word, StringComparison.OrdinalIgnoreCase)) return 0.85;
        var near = Array.Exists(Neighbours, n => n.Contains(word, StringComparer.OrdinalIgnoreCase) && n.Contains(outline.Family, StringComparer.OrdinalIgnoreCase));
        return near ? 0.05 : BlunderRate / EvidenceReader.PackageWords.Count;
    }

    internal override double Wide(NameEvidence evidence) => 1.0 / EvidenceReader.PackageWords.Count;

    internal override string Say(NameEvidence evidence, Part part, double log) =>
        FactorSentences.Package(evidence.Package!, [.. part.Packages.Select(p => p.Family).Where(f => f.Length > 0).Distinct(StringComparer.Ordinal)]);
}
