using Lidoff.Evidence.Pictures;
using Lidoff.Numbers;

namespace Lidoff.Seeing.Measuring.Edges;

/// <summary>
/// The clicked line or circle that an edge is looked for along: places by how far along and how far across, and the ways in which the
/// edge may lie off it (offset and turn; for a circle offset and shift), each with the standard deviation that clicks give it.
/// </summary>
internal sealed class EdgeTrack
{
    private readonly PicturePoint origin;
    private readonly (double X, double Y) along;
    private readonly double radius;
    private readonly bool byEnds;

    private EdgeTrack(PicturePoint origin, (double X, double Y) along, double radius, bool byEnds, double[] spreads, double from, double to)
    {
        (this.origin, this.along, this.radius, this.byEnds) = (origin, along, radius, byEnds);
        (Spreads, From, To) = (spreads, from, to);
    }

    /// <summary>Standard deviation of each coefficient, px.</summary>
    public double[] Spreads { get; }

    /// <summary>Where along the search begins, px.</summary>
    public double From { get; }

    /// <summary>Where it ends, px.</summary>
    public double To { get; }

    /// <summary>The side of a body from one corner to the next, without what corners spoil. Across is to the right of the way along.</summary>
    /// <param name="from">One corner.</param>
    /// <param name="to">The next.</param>
    /// <param name="fromPx">Standard uncertainty of the one, px.</param>
    /// <param name="toPx">And of the next, px.</param>
    public static EdgeTrack Side(PicturePoint from, PicturePoint to, double fromPx, double toPx)
    {
        var length = from.DistanceTo(to);
        // Corners are rounded, and clicked too far along or not far enough.
        var (first, last) = (Math.Min(0.2 * length, 2 + (2 * fromPx) + (0.03 * length)), Math.Min(0.2 * length, 2 + (2 * toPx) + (0.03 * length)));
        return new(from, Direction(from, to, length), length, true, [fromPx, toPx], first, length - last) { Reach = 1 + (3 * Math.Max(fromPx, toPx)), MiddlePx = Math.Sqrt((fromPx * fromPx) + (toPx * toPx)) / 2 };
    }

    /// <summary>A strip beside the end of a length, across its direction: offset (along the length, away from its other end) and turn of the edge.</summary>
    public static EdgeTrack End(PicturePoint end, PicturePoint other, double clickPx)
    {
        var length = end.DistanceTo(other);
        var half = Math.Clamp(0.12 * length, 4, 14);
        var (x, y) = Direction(other, end, length);
        // Lengths are clicked square to edges within 4° or so.
        return new(end, (-y, x), half, false, [clickPx, 0.07 * half], -half, half) { LeastSupport = 0.6, PerVote = 2, Reach = 0.5 + (2 * clickPx), MiddlePx = clickPx, Common = Math.Sqrt(2), Hidden = 0.3, MissingBeside = 0.08 };
    }

    /// <summary>Around a circle: offset of its radius, and shift of its middle.</summary>
    public static EdgeTrack Circle(PicturePoint middle, double radius, double clickPx, int clicks)
    {
        var spread = clickPx * Math.Sqrt(2.0 / Math.Max(3, clicks));
        return new(middle, (0, 0), radius, false, [spread, spread, spread], 0, 2 * Math.PI * radius) { Round = true, Reach = 1 + (3 * clickPx), MiddlePx = spread };
    }

    /// <summary>How far from the click an edge is looked for, px. A short strip sees leads, marks and dirt as well as a body's side does, and no more of the side than of them: it is searched only where most clicks lie.</summary>
    public double Reach { get; private init; }

    /// <summary>Share of profiles that must have their step on the line. Past a side leads may hide much of it; a strip that half shows something else says nothing.</summary>
    public double LeastSupport { get; private init; } = 0.3;

    /// <summary>What a line that all profiles show counts against one that none does, as a logarithm of odds.</summary>
    public double PerVote { get; private init; } = 4;

    /// <summary>Standard uncertainty that clicks give its middle across, px.</summary>
    public double MiddlePx { get; private init; }

    /// <summary>
    /// Share of a step's blur in which the meant edge may hide: a flank seen at a slant, a rounded rim, a thin bevel, a line of shadow. Along a side, measured on rendered bodies
    /// with flanks, leads and shadows; a short strip tells less of them, and there it is measured on drawn bodies with rims and bevels.
    /// </summary>
    public double Hidden { get; private init; } = 0.06;

    /// <summary>What the meant edge not showing at all counts where other steps run beside the found one, as odds against an edge clicked on the spot. Measured like <see cref="Hidden"/>.</summary>
    public double MissingBeside { get; private init; } = 0.001;

    /// <summary>How often what all of an edge shares counts in it: both ends of a length share it, which is √2 in each.</summary>
    public double Common { get; private init; } = 1;

    /// <summary>How far across its middle lies by coefficients; of a circle, by how much the radius grows.</summary>
    public double Middle(double[] coefficients) => byEnds ? (coefficients[0] + coefficients[1]) / 2 : coefficients[0];

    /// <summary>Coefficients of the line so far across from another, parallel to it.</summary>
    public double[] Moved(double[] coefficients, double off) => [.. coefficients.Select((each, k) => each + (k == 0 || byEnds ? off : 0))];

    /// <summary>True for a circle.</summary>
    public bool Round { get; private init; }

    /// <summary>The place that far along and across; across is outwards of a body clicked clockwise, a length and a circle.</summary>
    public PicturePoint At(double s, double d)
    {
        if (!Round) return new(origin.X + (s * along.X) + (d * along.Y), origin.Y + (s * along.Y) - (d * along.X));
        var (sin, cos) = (Elementary.Sin(s / radius), Elementary.Cos(s / radius));
        return new(origin.X + ((radius + d) * cos), origin.Y + ((radius + d) * sin));
    }

    /// <summary>What each coefficient counts at a place along.</summary>
    public void Basis(double s, Span<double> row)
    {
        if (Round)
        {
            (row[0], row[1], row[2]) = (1, Elementary.Cos(s / radius), Elementary.Sin(s / radius));
            return;
        }

        (row[0], row[1]) = byEnds ? (1 - (s / radius), s / radius) : (1, s / radius);
    }

    private static (double X, double Y) Direction(PicturePoint from, PicturePoint to, double length) => ((to.X - from.X) / length, (to.Y - from.Y) / length);
}
