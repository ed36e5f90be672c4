using Lidoff.Catalogue.Parts;
using Lidoff.Naming.Asking;

namespace Lidoff.Naming.Factors;

/// <summary>The number of pins: one more or less is a miscount, or a pad underneath that some count and some do not.</summary>
public sealed class PinsFactor : OutlineFactor
{
    /// <summary>Pin counts spread over about sixty values.</summary>
    private const double Range = 60;

    /// <inheritdoc/>
    public override string Evidence => "pins";

    /// <inheritdoc/>
    public override int Order => 40;

    /// <inheritdoc/>
    public override double BlunderRate => 0.04;

    /// <inheritdoc/>
    public override bool Speaks(NameEvidence evidence) => evidence.Pins is not null;

    internal override double? Likelihood(NameEvidence evidence, PackageFact outline)
    {
        if (outline.Pins is not { } pins) return null;
        var off = Math.Abs(pins - evidence.Pins!.Value);
        return (off switch { 0 => 0.86, 1 => 0.05, _ => 0 }) + (BlunderRate / Range);
    }

    internal override double Wide(NameEvidence evidence) => 1 / Range;

    internal override string Say(NameEvidence evidence, Part part, double log) => FactorSentences.Pins(evidence.Pins!.Value, [.. part.Packages.Select(p => p.Pins).OfType<int>().Distinct().Order()]);
}
