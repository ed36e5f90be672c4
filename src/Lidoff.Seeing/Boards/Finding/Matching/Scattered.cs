using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Boards.Finding.Matching;

/// <summary>Over how much of a picture places lie, one far from all others counting little.</summary>
internal static class Scattered
{
    /// <summary>Area of the rectangle over which as many even places would vary as much (W²/12 and H²/12 along its sides), px².</summary>
    public static double Area(IEnumerable<PicturePoint> places)
    {
        double n = 0, x = 0, y = 0, xx = 0, yy = 0, xy = 0;
        foreach (var place in places) (n, x, y, xx, yy, xy) = (n + 1, x + place.X, y + place.Y, xx + (place.X * place.X), yy + (place.Y * place.Y), xy + (place.X * place.Y));
        if (n < 3) return 0;
        var (vx, vy, c) = ((xx / n) - (x / n * (x / n)), (yy / n) - (y / n * (y / n)), (xy / n) - (x / n * (y / n)));
        return 12 * Math.Sqrt(Math.Max(0, (vx * vy) - (c * c)));
    }
}
