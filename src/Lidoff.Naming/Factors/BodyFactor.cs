using Lidoff.Catalogue.Parts;
using Lidoff.Naming.Asking;

namespace Lidoff.Naming.Factors;

/// <summary>Length and width of the body, in either order, with the reading's spread and the maker's.</summary>
public sealed class BodyFactor : OutlineFactor
{
    /// <summary>
    /// Standard deviation of a moulded body about its nominal size, mm: a basic 4.00 mm body has a 0.10 mm profile zone and flash besides
    /// (package drawings, checkbook §3), and some rows are rounded.
    /// </summary>
    private const double Moulded = 0.06;

    /// <summary>The same for a die, which is sawn: drawings give about ±0.03 to 0.05 mm.</summary>
    private const double Sawn = 0.03;

    /// <summary>Bodies lie somewhere between 0.3 and 15 mm.</summary>
    private const double Range = 15;

    /// <inheritdoc/>
    public override string Evidence => "body";

    /// <inheritdoc/>
    public override int Order => 30;

    /// <inheritdoc/>
    public override double BlunderRate => 0.03;

    /// <inheritdoc/>
    public override bool Speaks(NameEvidence evidence) => evidence.BodyMm is not null;

    internal override double? Likelihood(NameEvidence evidence, PackageFact outline)
    {
        if (outline.LengthMm is not { } length || outline.WidthMm is not { } width) return null;
        var (a, b) = evidence.BodyMm!.Value;
        var made = outline.Family is "WLCSP" or "die" ? Sawn : Moulded;
        var sigma = Math.Sqrt((evidence.BodyU * evidence.BodyU) + (made * made));
        var fit = Normal(Math.Max(a, b) - Math.Max(length, width), sigma) * Normal(Math.Min(a, b) - Math.Min(length, width), sigma);
        return ((1 - BlunderRate) * fit) + (BlunderRate * Wide(evidence));
    }

    internal override double Wide(NameEvidence evidence) => 2 / (Range * Range);

    internal override string Say(NameEvidence evidence, Part part, double log) => FactorSentences.Body(evidence.BodyMm!.Value, part.Packages, log);
}
