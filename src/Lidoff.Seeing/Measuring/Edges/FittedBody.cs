using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Measuring.Edges;

/// <summary>A body whose four sides were looked for.</summary>
/// <param name="Corners">Where its sides meet, in the order clicked; the fourth was clicked or follows from three.</param>
/// <param name="Sides">Its sides, from each corner to the next.</param>
/// <param name="First">Across it along its first side: from the middle of the fourth side to that of the second.</param>
/// <param name="Second">Across it along its second side: from the middle of the first side to that of the third.</param>
public sealed record FittedBody(ValueList<PicturePoint> Corners, ValueList<FittedSide> Sides, FittedLength First, FittedLength Second)
{
    /// <summary>The fourth corner, where three are known of a rectangle, and how doubtful each corner is, px: the fourth of three holds the errors of all, and the picture's slant.</summary>
    internal static (PicturePoint[] At, double[] Doubt) Around(IReadOnlyList<PicturePoint> corners, double clickPx)
    {
        var (a, b, c) = (corners[0], corners[1], corners[2]);
        var guessed = corners.Count == 3;
        return ([a, b, c, guessed ? new(a.X + c.X - b.X, a.Y + c.Y - b.Y) : corners[3]], [clickPx, clickPx, clickPx, guessed ? Math.Sqrt(3) * clickPx : clickPx]);
    }

    /// <summary>A body whose sides lie as clicked, because the picture cannot be read.</summary>
    internal static FittedBody AsClicked(IReadOnlyList<PicturePoint> corners, double clickPx)
    {
        var (at, doubt) = Around(corners, clickPx);
        FittedSide[] sides = [.. Enumerable.Range(0, 4).Select(i => Stayed(doubt[i], doubt[(i + 1) % 4], EdgeSentences.NotRead(EdgeSentences.Side(i))))];
        return new([.. at], [.. sides], Across(3, 1), Across(0, 2));

        FittedLength Across(int from, int to) => new(Middle(from), Middle(to));
        FittedEnd Middle(int side) => new(new((at[side].X + at[(side + 1) % 4].X) / 2, (at[side].Y + at[(side + 1) % 4].Y) / 2), sides[side].UPx, 0, sides[side].Trouble);
    }

    /// <summary>A side between two corners that stays where it is.</summary>
    internal static FittedSide Stayed(double firstPx, double lastPx, string trouble) => new(0, Math.Sqrt((firstPx * firstPx) + (lastPx * lastPx)) / 2, 0, 0, trouble);

    /// <summary>True where at least one side lies on an edge.</summary>
    public bool OnEdge => Sides.Any(side => side.OnEdge);
}
