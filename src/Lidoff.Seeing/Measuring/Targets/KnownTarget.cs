using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Measuring.Targets;

/// <summary>A target in a picture whose pitch a person gave: its places are known places of the picture.</summary>
/// <param name="Pattern">What repeats.</param>
/// <param name="PitchMm">From one corner or dot to the next, mm, above zero.</param>
/// <param name="PitchUMm">Standard uncertainty of the pitch, the same for all of it, mm, zero or more.</param>
/// <param name="Tiles">Known places, five or more.</param>
/// <param name="Bent">What whole parts of it lie off a flat grid, as a share of its length; zero or more.</param>
/// <param name="Found">How many corners or dots the known places stand for.</param>
public sealed record KnownTarget(TargetPattern Pattern, double PitchMm, double PitchUMm, ValueList<TargetTile> Tiles, double Bent, int Found)
{
    /// <summary>
    /// Standard uncertainty of the pitch of a target that somebody printed, as a share: laser printers stretch paper by up to half or one
    /// per cent, and not alike along and across. From memory, no source; a calliper over the whole print is better.
    /// </summary>
    public const double PrintedU = 0.004;

    /// <summary>The same for a target on glass: 0.1 % and better by its maker. From memory, no source; its certificate is better.</summary>
    public const double GlassU = 0.0006;

    /// <summary>Fewest known places.</summary>
    public const int LeastTiles = 5;

    // See TargetChecks: what shows of a bend is about a tenth of what it makes wrong.
    private const double WrongPerBent = 10;

    /// <summary>Whether each place was known by itself, so that its doubt was not taken from how they scatter.</summary>
    internal bool Placed { get; init; }

    /// <summary>Relative standard uncertainty of all lengths on it together: of its pitch, and of how flat it lies.</summary>
    public double RelativeU => Math.Sqrt((PitchUMm / PitchMm * (PitchUMm / PitchMm)) + (WrongPerBent * Bent * WrongPerBent * Bent));

    /// <summary>A target that was found, with its pitch.</summary>
    public static KnownTarget Of(FoundTarget found, double pitchMm, double pitchUMm)
    {
        Guard.NotNull(found);
        return new(found.Pattern, pitchMm, pitchUMm, found.Tiles, found.BentSteps / Math.Max(found.Columns, found.Rows), found.Places.Count);
    }

    /// <summary>The longest known length of it, which stands for it wherever one length of a picture is spoken of.</summary>
    /// <param name="heightMm">Height of the target above the board, mm.</param>
    public ReferenceLength Longest(double heightMm)
    {
        Guard.That(Tiles.Count >= LeastTiles, "five known places");
        var (a, b) = Tiles.SelectMany((one, i) => Tiles.Skip(i + 1).Select(other => (one, other))).MaxBy(pair => Steps(pair.one, pair.other));
        var mm = PitchMm * Steps(a, b);
        var px = a.At.DistanceTo(b.At) / Steps(a, b) * Math.Max(a.U, b.U);
        return new(a.At, b.At, mm, RelativeU * mm, heightMm, px) { Target = this };
    }

    private static double Steps(TargetTile a, TargetTile b) => Math.Sqrt(((a.Column - b.Column) * (a.Column - b.Column)) + ((a.Row - b.Row) * (a.Row - b.Row)));
}
