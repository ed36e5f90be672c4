using Lidoff.Catalogue.Parts;
using Lidoff.Naming.Asking;

namespace Lidoff.Naming.Factors;

/// <summary>Height of the body. Rows give the largest or the nominal height without saying which, so it tells little.</summary>
public sealed class HeightFactor : OutlineFactor
{
    /// <summary>Standard deviation about a listed height, mm: a height from a model is within ±0.15 mm at best (data notes).</summary>
    private const double Sigma = 0.1;

    /// <summary>Heights lie within about 2 mm.</summary>
    private const double Range = 2;

    /// <inheritdoc/>
    public override string Evidence => "height";

    /// <inheritdoc/>
    public override int Order => 60;

    /// <inheritdoc/>
    public override double BlunderRate => 0.1;

    /// <inheritdoc/>
    public override bool Speaks(NameEvidence evidence) => evidence.HeightMm is not null;

    internal override double? Likelihood(NameEvidence evidence, PackageFact outline) =>
        outline.HeightMm is { } height ? ((1 - BlunderRate) * Normal(evidence.HeightMm!.Value - height, Sigma)) + (BlunderRate / Range) : null;

    internal override double Wide(NameEvidence evidence) => 1 / Range;

    internal override string Say(NameEvidence evidence, Part part, double log) => FactorSentences.Height(evidence.HeightMm!.Value, [.. part.Packages.Select(p => p.HeightMm).OfType<double>().Distinct().Order()]);
}
