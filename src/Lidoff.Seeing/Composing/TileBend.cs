namespace Lidoff.Seeing.Composing;

/// <summary>
/// What lens and slant of one camera do to every tile alike: radial term, slant across and down, unequal sides and skew of the board's
/// plane, all 0 for a straight picture. Places are px of the tile.
/// </summary>
internal sealed class TileBend(int width, int height, double[] by)
{
    private readonly double half = Math.Sqrt(((double)width * width) + ((double)height * height)) / 2;

    /// <summary>The place on the board's plane, in the scale of the tile's middle.</summary>
    public (double X, double Y) Straight(double x, double y) => Straight(x, y, by);

    /// <summary>How the straightened place moves with the <paramref name="k"/>-th term.</summary>
    public (double X, double Y) Slope(double x, double y, int k)
    {
        const double step = 1e-5;
        double[] more = [.. by];
        more[k] += step;
        var ((ax, ay), (bx, by2)) = (Straight(x, y, by), Straight(x, y, more));
        return ((bx - ax) / step, (by2 - ay) / step);
    }

    /// <summary>The place of the tile that is straightened to one.</summary>
    public (double X, double Y) Bent(double x, double y)
    {
        var (u, v) = (x, y);
        // The bend is a few hundredths, so each turn takes all but as much of what is left away.
        for (var turn = 0; turn < 8; turn++)
        {
            var (sx, sy) = Straight(u, v);
            (u, v) = (u + x - sx, v + y - sy);
        }

        return (u, v);
    }

    /// <summary>Farthest that any corner is moved, px.</summary>
    public double Most => new[] { (0.0, 0.0), (width, 0), (0, height), (width, height) }.Max(at =>
    {
        var (x, y) = Straight(at.Item1, at.Item2);
        return Math.Sqrt(((x - at.Item1) * (x - at.Item1)) + ((y - at.Item2) * (y - at.Item2)));
    });

    private (double X, double Y) Straight(double x, double y, double[] with)
    {
        var (u, v) = ((x - (width / 2.0)) / half, (y - (height / 2.0)) / half);
        var radial = 1 + (with[0] * ((u * u) + (v * v)));
        (u, v) = (u * radial, v * radial);
        var depth = 1 + (with[1] * u) + (with[2] * v);
        (u, v) = (((u * (1 + with[3])) + (v * with[4])) / depth, v / depth);
        return ((u * half) + (width / 2.0), (v * half) + (height / 2.0));
    }
}
