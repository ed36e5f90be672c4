using Lidoff.Catalogue.Parts;
using Lidoff.Naming.Asking;

namespace Lidoff.Naming.Factors;

/// <summary>Pin pitch.</summary>
public sealed class PitchFactor : OutlineFactor
{
    /// <summary>Standard deviation of a measured pitch, mm: it is a span divided by its gaps, so good to hundredths. A judgement, no source.</summary>
    private const double Sigma = 0.02;

    /// <summary>Pitches lie within about 1.3 mm.</summary>
    private const double Range = 1.3;

    /// <inheritdoc/>
    public override string Evidence => "pitch";

    /// <inheritdoc/>
    public override int Order => 50;

    /// <summary>The trade counts gaps wrongly now and then (N against N - 1).</summary>
    public override double BlunderRate => 0.05;

    /// <inheritdoc/>
    public override bool Speaks(NameEvidence evidence) => evidence.PitchMm is not null;

    internal override double? Likelihood(NameEvidence evidence, PackageFact outline) =>
        outline.PitchMm is { } pitch ? ((1 - BlunderRate) * Normal(evidence.PitchMm!.Value - pitch, Sigma)) + (BlunderRate / Range) : null;

    internal override double Wide(NameEvidence evidence) => 1 / Range;

    internal override string Say(NameEvidence evidence, Part part, double log) => FactorSentences.Pitch(evidence.PitchMm!.Value, [.. part.Packages.Select(p => p.PitchMm).OfType<double>().Distinct().Order()]);
}
