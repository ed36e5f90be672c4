using Lidoff.Seeing.Measuring.Targets;

namespace Lidoff.Seeing.Measuring.Cameras;

/// <summary>The known places of a target as they show, and where they lie on it, mm.</summary>
internal sealed class SeenTarget
{
    private readonly (double X, double Y)[] seen;
    private readonly (double X, double Y)[] known;
    private readonly double[] weights;

    private readonly bool placed;

    private SeenTarget((double X, double Y)[] seen, (double X, double Y)[] known, double[] weights, bool placed) => (this.seen, this.known, this.weights, this.placed) = (seen, known, weights, placed);

    /// <summary>Number of residuals: two a place.</summary>
    public int Count => 2 * seen.Length;

    /// <summary>What is left of them where nine numbers were fitted (a homography and a lens), in squares of standard deviations: their doubt was taken from that.</summary>
    public double Expected => placed ? 0 : Math.Max(0, Count - 9);

    /// <summary>What places of which each was known by itself have to tell besides the distance: two numbers each, less shift and turn.</summary>
    public int Degrees => placed ? Count - 4 : 0;

    /// <summary>From a target in a picture.</summary>
    /// <param name="target">The target.</param>
    /// <param name="frame">The picture.</param>
    /// <param name="wider">How many times as doubtful its places are as they say.</param>
    public static SeenTarget Of(KnownTarget target, PictureFrame frame, double wider = 1)
    {
        var half = Math.Max(frame.Width, frame.Height) / 2.0;
        // Steps noted the other way round than they show, as in a picture that is flipped, are the same target.
        var turned = Turned(target) < 0 ? -1 : 1;
        // Never exactly zero, so that every place has a finite weight.
        return new(
            [.. target.Tiles.Select(tile => ((tile.At.X - (frame.Width / 2.0)) / half, (tile.At.Y - (frame.Height / 2.0)) / half))],
            [.. target.Tiles.Select(tile => (tile.Column * target.PitchMm, turned * tile.Row * target.PitchMm))],
            [.. target.Tiles.Select(tile => Math.Max(1e-6, wider * tile.U) * target.PitchMm).Select(u => 1 / (u * u))],
            target.Placed);
    }

    // Sign of the map from steps to px: the determinant of what both vary by together.
    private static double Turned(KnownTarget target)
    {
        var (x, y, c, r) = (target.Tiles.Average(tile => tile.At.X), target.Tiles.Average(tile => tile.At.Y), target.Tiles.Average(tile => tile.Column), target.Tiles.Average(tile => tile.Row));
        double Sum(Func<TargetTile, double> of) => target.Tiles.Sum(of);
        return (Sum(tile => (tile.At.X - x) * (tile.Column - c)) * Sum(tile => (tile.At.Y - y) * (tile.Row - r))) - (Sum(tile => (tile.At.X - x) * (tile.Row - r)) * Sum(tile => (tile.At.Y - y) * (tile.Column - c)));
    }

    /// <summary>
    /// How the places fit a pose: the distance along the axis to the target that fits best (turned and shifted as it may be) with its standard uncertainty but for the pitch,
    /// mm, and the sum of squares that is left. Residuals in standard deviations are written where there is room.
    /// </summary>
    public (double Mm, double U, double Misfit) Fit(CameraPose pose, double focal, Span<double> rest)
    {
        Span<double> x = stackalloc double[seen.Length], y = stackalloc double[seen.Length];
        var (weight, mx, my, kx, ky) = (0.0, 0.0, 0.0, 0.0, 0.0);
        for (var i = 0; i < seen.Length; i++)
        {
            (x[i], y[i]) = pose.OnBoard(seen[i].X, seen[i].Y, focal);
            var w = weights[i];
            weight += w;
            (mx, my) = (mx + (w * x[i]), my + (w * y[i]));
            (kx, ky) = (kx + (w * known[i].X), ky + (w * known[i].Y));
        }

        (mx, my, kx, ky) = (mx / weight, my / weight, kx / weight, ky / weight);
        var (own, real, turned, all) = (0.0, 0.0, 0.0, 0.0);
        for (var i = 0; i < seen.Length; i++)
        {
            var (dx, dy, ex, ey, w) = (x[i] - mx, y[i] - my, known[i].X - kx, known[i].Y - ky, weights[i]);
            own += w * ((dx * dx) + (dy * dy));
            real += w * ((dx * ex) + (dy * ey));
            turned += w * ((dx * ey) - (dy * ex));
            all += w * ((ex * ex) + (ey * ey));
        }

        var (a, b) = (real / own, turned / own);
        if (rest.Length >= Count)
        {
            for (var i = 0; i < seen.Length; i++)
            {
                var (dx, dy, root) = (x[i] - mx, y[i] - my, Math.Sqrt(weights[i]));
                rest[2 * i] = root * (known[i].X - kx - ((a * dx) - (b * dy)));
                rest[(2 * i) + 1] = root * (known[i].Y - ky - ((b * dx) + (a * dy)));
            }
        }

        return (Math.Sqrt((a * a) + (b * b)), 1 / Math.Sqrt(own), all - (own * ((a * a) + (b * b))));
    }
}
