using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Measuring;

namespace Lidoff.Seeing.Boards.Finding.Matching;

/// <summary>The view of one plane from two places by least squares with Tukey's weights: what lies further off than the tolerance counts for nothing.</summary>
internal static class ViewFit
{
    private const int Unknowns = 8;

    // Weak beliefs that keep the view flat where the marks do not speak: over the whole extent the scale changes by some 10 % at most (two
    // views of 15°), in units of the extent.
    private const double Bound = 0.15;

    /// <summary>The map, from a first guess; null where the marks do not hold it.</summary>
    /// <param name="pairs">Pairs of places with the standard uncertainty of both together, px of the second picture.</param>
    /// <param name="guess">The first guess.</param>
    /// <param name="extent">Extent of the first picture's marks, px.</param>
    /// <param name="tolerance">px of the second picture.</param>
    public static Matrix3? Of(IReadOnlyList<(PicturePoint From, PicturePoint To, double U)> pairs, Matrix3 guess, double extent, double tolerance)
    {
        if (pairs.Count < 4) return null;
        var (cx, cy) = (pairs.Average(pair => pair.From.X), pairs.Average(pair => pair.From.Y));
        // About the middle of the pairs, in units of the extent, and with a last element of one.
        var m = guess.After(new(extent, 0, cx, 0, extent, cy, 0, 0, 1));
        if (!(Math.Abs(m.I) > 1e-12)) return null;
        double[] h = [m.A / m.I, m.B / m.I, m.C / m.I, m.D / m.I, m.E / m.I, m.F / m.I, m.G / m.I, m.H / m.I];
        Span<double> rx = stackalloc double[Unknowns];
        Span<double> ry = stackalloc double[Unknowns];
        for (var round = 0; round < 6; round++)
        {
            var (square, right) = (new double[Unknowns, Unknowns], new double[Unknowns]);
            for (var j = 6; j < Unknowns; j++)
            {
                square[j, j] = 1 / (Bound * Bound);
                right[j] = -h[j] / (Bound * Bound);
            }

            foreach (var (from, to, u) in pairs)
            {
                var (x, y) = ((from.X - cx) / extent, (from.Y - cy) / extent);
                var w = (h[6] * x) + (h[7] * y) + 1;
                if (w < 0.3) return null;
                var (px, py) = (((h[0] * x) + (h[1] * y) + h[2]) / w, ((h[3] * x) + (h[4] * y) + h[5]) / w);
                var (dx, dy) = (to.X - px, to.Y - py);
                var share = ((dx * dx) + (dy * dy)) / (tolerance * tolerance);
                if (share >= 1) continue;
                var weight = (1 - share) * (1 - share) / ((u * u) + (0.0025 * tolerance * tolerance));
                (rx[0], rx[1], rx[2], rx[3], rx[4], rx[5], rx[6], rx[7]) = (x / w, y / w, 1 / w, 0, 0, 0, -px * x / w, -px * y / w);
                (ry[0], ry[1], ry[2], ry[3], ry[4], ry[5], ry[6], ry[7]) = (0, 0, 0, x / w, y / w, 1 / w, -py * x / w, -py * y / w);
                for (var j = 0; j < Unknowns; j++)
                {
                    right[j] += weight * ((rx[j] * dx) + (ry[j] * dy));
                    for (var k = 0; k < Unknowns; k++) square[j, k] += weight * ((rx[j] * rx[k]) + (ry[j] * ry[k]));
                }
            }

            if (PositiveMatrix.Factor(square) is not { } factor) return null;
            var step = PositiveMatrix.Solve(factor, right);
            for (var j = 0; j < Unknowns; j++) h[j] += step[j];
            if (!h.All(double.IsFinite)) return null;
        }

        return new Matrix3(h[0], h[1], h[2], h[3], h[4], h[5], h[6], h[7], 1).After(new(1 / extent, 0, -cx / extent, 0, 1 / extent, -cy / extent, 0, 0, 1));
    }
}
