using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Pictures;

/// <summary>Fits maps through points seen in two frames, by least squares of the distances in the frame they end in.</summary>
public static class MapFit
{
    private const string AffineName = "shift, scale and shear";
    private const string HomographyName = "view in perspective";

    /// <summary>Parallels stay parallel: three points or more, not on one line.</summary>
    public static Outcome<FittedMap> Affine(string from, string to, IReadOnlyList<PointPair> pairs)
    {
        var faults = PairChecks.Faults(pairs, 3, AffineName);
        if (faults.Count > 0) return Outcome<FittedMap>.Failed(faults);
        var (tf, tt) = (Normalising.Of([.. pairs.Select(p => p.From)]), Normalising.Of([.. pairs.Select(p => p.To)]));
        double[,] Rows()
        {
            var rows = new double[pairs.Count, 3];
            for (var i = 0; i < pairs.Count; i++)
            {
                var p = Normalising.Apply(tf, pairs[i].From);
                (rows[i, 0], rows[i, 1], rows[i, 2]) = (p.X, p.Y, 1);
            }
            return rows;
        }

        var goal = pairs.Select(p => Normalising.Apply(tt, p.To)).ToList();
        var x = LeastSquares.Solve(Rows(), [.. goal.Select(g => g.X)]);
        var y = LeastSquares.Solve(Rows(), [.. goal.Select(g => g.Y)]);
        if (x is null || y is null) return PictureSentences.OnOneLine("given", AffineName);
        return Finished(from, to, pairs, tt.Inverse().After(new Matrix3(x[0], x[1], x[2], y[0], y[1], y[2], 0, 0, 1).After(tf)), 6);
    }

    /// <summary>
    /// A flat thing seen from any side: four points or more, no three of four on one line. Direct linear transform on
    /// normalised points, then Gauss-Newton on the distances themselves.
    /// </summary>
    public static Outcome<FittedMap> Homography(string from, string to, IReadOnlyList<PointPair> pairs)
    {
        var faults = PairChecks.Faults(pairs, 4, HomographyName);
        if (faults.Count > 0) return Outcome<FittedMap>.Failed(faults);
        var (tf, tt) = (Normalising.Of([.. pairs.Select(p => p.From)]), Normalising.Of([.. pairs.Select(p => p.To)]));
        var normal = pairs.Select(p => new PointPair(Normalising.Apply(tf, p.From), Normalising.Apply(tt, p.To))).ToList();
        // With no three of four on a line the equations hang together only where the points' mean falls on the horizon.
        if (Linear(normal) is not { } h || !OneSideOfHorizon(h, normal)) return PictureSentences.Crossed;
        for (var round = 0; round < 8; round++)
        {
            // A fixed count of rounds: a stopping rule would make the last bits hang on the noise.
            if (Refined(h, normal) is not { } better || !OneSideOfHorizon(better, normal) || Cost(better, normal) > Cost(h, normal)) break;
            h = better;
        }
        return Finished(from, to, pairs, tt.Inverse().After(h.After(tf)), 8);
    }

    // The last element may be set to 1: it is w at the mean of the points, which lies inside what was seen.
    private static Matrix3? Linear(List<PointPair> pairs)
    {
        var (a, b) = (new double[2 * pairs.Count, 8], new double[2 * pairs.Count]);
        for (var i = 0; i < pairs.Count; i++)
        {
            var ((x, y), (u, v)) = ((pairs[i].From.X, pairs[i].From.Y), (pairs[i].To.X, pairs[i].To.Y));
            Fill(a, 2 * i, x, y, 1, 0, 0, 0, -u * x, -u * y);
            Fill(a, (2 * i) + 1, 0, 0, 0, x, y, 1, -v * x, -v * y);
            (b[2 * i], b[(2 * i) + 1]) = (u, v);
        }
        return LeastSquares.Solve(a, b) is { } s ? new(s[0], s[1], s[2], s[3], s[4], s[5], s[6], s[7], 1) : null;
    }

    private static Matrix3? Refined(Matrix3 h, List<PointPair> pairs)
    {
        var (a, b) = (new double[2 * pairs.Count, 8], new double[2 * pairs.Count]);
        for (var i = 0; i < pairs.Count; i++)
        {
            var (x, y) = (pairs[i].From.X, pairs[i].From.Y);
            var w = W(h, pairs[i].From);
            var (u, v) = (((h.A * x) + (h.B * y) + h.C) / w, ((h.D * x) + (h.E * y) + h.F) / w);
            Fill(a, 2 * i, x / w, y / w, 1 / w, 0, 0, 0, -u * x / w, -u * y / w);
            Fill(a, (2 * i) + 1, 0, 0, 0, x / w, y / w, 1 / w, -v * x / w, -v * y / w);
            (b[2 * i], b[(2 * i) + 1]) = (pairs[i].To.X - u, pairs[i].To.Y - v);
        }
        if (LeastSquares.Solve(a, b) is not { } s) return null;
        return new(h.A + s[0], h.B + s[1], h.C + s[2], h.D + s[3], h.E + s[4], h.F + s[5], h.G + s[6], h.H + s[7], 1);
    }

    private static double Cost(Matrix3 h, List<PointPair> pairs)
    {
        var sum = 0.0;
        foreach (var p in pairs)
        {
            var w = W(h, p.From);
            var to = new PicturePoint(((h.A * p.From.X) + (h.B * p.From.Y) + h.C) / w, ((h.D * p.From.X) + (h.E * p.From.Y) + h.F) / w);
            sum += to.DistanceTo(p.To) * to.DistanceTo(p.To);
        }
        return sum;
    }

    private static bool OneSideOfHorizon(Matrix3 h, List<PointPair> pairs) => pairs.TrueForAll(p => W(h, p.From) > 1e-6);

    private static double W(Matrix3 h, PicturePoint p) => (h.G * p.X) + (h.H * p.Y) + h.I;

    private static void Fill(double[,] a, int row, params ReadOnlySpan<double> values)
    {
        for (var j = 0; j < values.Length; j++) a[row, j] = values[j];
    }

    private static Outcome<FittedMap> Finished(string from, string to, IReadOnlyList<PointPair> pairs, Matrix3 matrix, int unknowns)
    {
        var d = matrix.Determinant;
        if (!double.IsFinite(d) || d == 0) return PictureSentences.OnOneLine("given", unknowns == 8 ? HomographyName : AffineName);
        var map = new Projective(from, to, matrix);
        return new FittedMap(map, [.. pairs.Select(p => map.Map(p.From).DistanceTo(p.To))], (2 * pairs.Count) - unknowns);
    }
}
