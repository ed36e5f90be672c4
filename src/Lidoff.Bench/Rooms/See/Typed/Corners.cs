using Lidoff.Evidence.Pictures;

namespace Lidoff.Bench.Rooms.See.Typed;

/// <summary>Three corners of a body, clicked in turn; the fourth follows from them.</summary>
public static class Corners
{
    /// <summary>Whether a point lies on or within the parallelogram of the corners; false where they lie on one line.</summary>
    public static bool Hold(PicturePoint first, PicturePoint corner, PicturePoint last, PicturePoint point)
    {
        var (ax, ay) = (first.X - corner.X, first.Y - corner.Y);
        var (bx, by) = (last.X - corner.X, last.Y - corner.Y);
        var area = (ax * by) - (ay * bx);
        if (area == 0) return false;
        var (px, py) = (point.X - corner.X, point.Y - corner.Y);
        var (along, across) = (((px * by) - (py * bx)) / area, ((ax * py) - (ay * px)) / area);
        return along is >= 0 and <= 1 && across is >= 0 and <= 1;
    }
}
