namespace Lidoff.Evidence.Pictures;

/// <summary>
/// Moves points so that their mean is the origin and their mean distance from it √2: without it the least squares of a
/// homography in pixels weighs its terms a million to one (R. Hartley, "In defense of the eight-point algorithm", 1997).
/// </summary>
internal static class Normalising
{
    public static Matrix3 Of(IReadOnlyList<PicturePoint> points)
    {
        double x = 0, y = 0, distance = 0;
        foreach (var p in points) (x, y) = (x + p.X, y + p.Y);
        var mean = new PicturePoint(x / points.Count, y / points.Count);
        foreach (var p in points) distance += p.DistanceTo(mean);
        var s = Math.Sqrt(2) * points.Count / distance;
        return new(s, 0, -s * mean.X, 0, s, -s * mean.Y, 0, 0, 1);
    }

    public static PicturePoint Apply(Matrix3 m, PicturePoint p) => new((m.A * p.X) + m.C, (m.E * p.Y) + m.F);
}
