using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Boards;

/// <summary>A rectangle of a board, drawn flat: seen from the top, or from below with left and right swapped. In the board's millimetres.</summary>
/// <param name="MinX">Left edge as seen from the top.</param>
/// <param name="MinY">Upper edge.</param>
/// <param name="MaxX">Right edge as seen from the top.</param>
/// <param name="MaxY">Lower edge.</param>
/// <param name="FromBelow">True for the page that lies turned over.</param>
public sealed record BoardSheet(double MinX, double MinY, double MaxX, double MaxY, bool FromBelow)
{
    /// <summary>Width over height.</summary>
    public double Aspect => (MaxX - MinX) / (MaxY - MinY);

    /// <summary>From the sheet, <paramref name="height"/> units high and its upper left corner at the origin, to the board.</summary>
    public Projective ToBoard(double height)
    {
        var mm = (MaxY - MinY) / Guard.Positive(height);
        return new("sheet", "board", FromBelow ? new(-mm, 0, MaxX, 0, mm, MinY, 0, 0, 1) : new(mm, 0, MinX, 0, mm, MinY, 0, 0, 1));
    }

    /// <summary>
    /// What two pictures of one board show in common, and the places that were pointed at in either, with a little air around; null where
    /// that is nothing, or where a picture leans so much that it sees the board's horizon.
    /// </summary>
    /// <param name="first">A picture on the board, and its size in px.</param>
    /// <param name="second">The other.</param>
    /// <param name="places">Places pointed at in the first, and in the second, px.</param>
    public static BoardSheet? Common((LaidPicture Picture, double Width, double Height) first, (LaidPicture Picture, double Width, double Height) second, (IReadOnlyList<PicturePoint> First, IReadOnlyList<PicturePoint> Second) places)
    {
        var (a, b) = (Reach(first), Reach(second));
        if (a is null || b is null) return null;
        var common = a.Value.And(b.Value);
        foreach (var (picture, points) in new[] { (first.Picture, places.First), (second.Picture, places.Second) })
        {
            var toBoard = picture.ToPicture.Inverse();
            foreach (var place in points) common = common.With(toBoard.Map(place));
        }

        common = common.Grown(Air).And(a.Value.Or(b.Value));
        return common.Empty ? null : new(common.Left, common.Top, common.Right, common.Bottom, false);
    }

    private const double Air = 0.03;

    private static Box? Reach((LaidPicture Picture, double Width, double Height) of)
    {
        var toBoard = of.Picture.ToPicture.Inverse();
        PicturePoint[] corners = [new(0, 0), new(of.Width, 0), new(of.Width, of.Height), new(0, of.Height)];
        // Beyond the horizon a place of the picture is on no board: there the map's denominator has changed its sign.
        var m = ((Projective)toBoard).Matrix;
        double[] depths = [.. corners.Select(corner => (m.G * corner.X) + (m.H * corner.Y) + m.I)];
        if (!Array.TrueForAll(depths, depth => depth > 0) && !Array.TrueForAll(depths, depth => depth < 0)) return null;
        return corners.Aggregate(Box.None, (box, corner) => box.With(toBoard.Map(corner)));
    }

    private readonly record struct Box(double Left, double Top, double Right, double Bottom)
    {
        public static Box None { get; } = new(double.PositiveInfinity, double.PositiveInfinity, double.NegativeInfinity, double.NegativeInfinity);

        public bool Empty => !(Right > Left && Bottom > Top);

        public Box With(PicturePoint point) => new(Math.Min(Left, point.X), Math.Min(Top, point.Y), Math.Max(Right, point.X), Math.Max(Bottom, point.Y));

        public Box And(Box other) => new(Math.Max(Left, other.Left), Math.Max(Top, other.Top), Math.Min(Right, other.Right), Math.Min(Bottom, other.Bottom));

        public Box Or(Box other) => new(Math.Min(Left, other.Left), Math.Min(Top, other.Top), Math.Max(Right, other.Right), Math.Max(Bottom, other.Bottom));

        public Box Grown(double share) => Empty ? this : new(Left - (share * (Right - Left)), Top - (share * (Bottom - Top)), Right + (share * (Right - Left)), Bottom + (share * (Bottom - Top)));
    }
}
