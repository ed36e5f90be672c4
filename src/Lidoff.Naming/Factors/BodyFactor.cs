using Lidoff.Catalogue.Parts;
using Lidoff.Naming.Asking;

namespace Lidoff.Naming.Factors;

/// <summary>Length and width of the body, in either order, with the reading's spread and the maker's; or one of them, where it is known which.</summary>
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
    public override bool Speaks(NameEvidence evidence) => evidence.BodyMm is not null || evidence.LongMm is not null || evidence.ShortMm is not null;

    internal override double? Likelihood(NameEvidence evidence, PackageFact outline)
    {
        if (outline.LengthMm is not { } length || outline.WidthMm is not { } width) return null;
        var made = outline.Family is "WLCSP" or "die" ? Sawn : Moulded;
        var sigma = Math.Sqrt((evidence.BodyU * evidence.BodyU) + (made * made));
        var (longSide, shortSide) = Sides(evidence);
        var fit = (longSide is { } a ? Normal(a - Math.Max(length, width), sigma) : 1) * (shortSide is { } b ? Normal(b - Math.Min(length, width), sigma) : 1);
        return ((1 - BlunderRate) * fit) + (BlunderRate * Wide(evidence));
    }

    // Two sides that lie anywhere, put in order; of one alone what is left when the other may be anything.
    internal override double Wide(NameEvidence evidence) => Sides(evidence) switch
    {
        ({ } a, null) => 2 * Math.Clamp(a, 0.3, Range) / (Range * Range),
        (null, { } b) => 2 * (Range - Math.Clamp(b, 0.3, Range - 0.3)) / (Range * Range),
        _ => 2 / (Range * Range),
    };

    internal override string Say(NameEvidence evidence, Part part, double log) => evidence.BodyMm is { } both
        ? FactorSentences.Body(both, part.Packages, log)
        : FactorSentences.BodySide(evidence.LongMm ?? evidence.ShortMm!.Value, evidence.LongMm is not null, part.Packages, log);

    private static (double? Long, double? Short) Sides(NameEvidence evidence) => evidence.BodyMm is { } both ? (Math.Max(both.A, both.B), Math.Min(both.A, both.B)) : (evidence.LongMm, evidence.ShortMm);
}
