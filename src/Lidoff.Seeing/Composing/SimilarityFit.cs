using Lidoff.Numbers.Spreads;

namespace Lidoff.Seeing.Composing;

/// <summary>The similarity that takes places to their partners, by least squares that let go of what does not fit.</summary>
internal static class SimilarityFit
{
    private const int Rounds = 12;

    /// <summary>The map (its scale drawn to 1 where it is known beforehand to be near it), the root mean square of what is left at the matches it kept (px, both axes together), and how many it kept.</summary>
    public static (Similarity Map, double Rms, int Kept)? To(IReadOnlyList<PointMatch> matches, double soft = 1, double usualScale = double.PositiveInfinity)
    {
        if (matches.Count < 3) return null;
        var weights = new double[matches.Count];
        Array.Fill(weights, 1);
        // From the middle shift: a third of wrong matches does not move it.
        var map = new Similarity(1, 0, Statistics.Median(matches.Select(m => m.ToX - m.X)), Statistics.Median(matches.Select(m => m.ToY - m.Y)));
        var reach = Math.Max(soft * 8, 3 * Statistics.Median(matches.Select(m => Away(map, m))));
        for (var round = 0; round < Rounds; round++)
        {
            for (var i = 0; i < weights.Length; i++)
            {
                var part = Away(map, matches[i]) / reach;
                weights[i] = part >= 1 ? 0 : (1 - (part * part)) * (1 - (part * part));
            }

            if (Solve(matches, weights, usualScale) is not { } better) return null;
            map = better;
            reach = Math.Max(soft * 3, reach * 0.7);
        }

        var kept = matches.Where((m, i) => weights[i] > 0).ToList();
        return kept.Count < 3 ? null : (map, Math.Sqrt(kept.Sum(m => Away(map, m) * Away(map, m)) / kept.Count), kept.Count);
    }

    /// <summary>How far a match lies from where a map puts it, px.</summary>
    public static double Away(Similarity map, PointMatch match)
    {
        var (x, y) = map.Apply(match.X, match.Y);
        return Math.Sqrt(((x - match.ToX) * (x - match.ToX)) + ((y - match.ToY) * (y - match.ToY)));
    }

    /// <summary>The similarity through two matches.</summary>
    public static Similarity Through(PointMatch a, PointMatch b)
    {
        var (x, y, u, v) = (b.X - a.X, b.Y - a.Y, b.ToX - a.ToX, b.ToY - a.ToY);
        var square = (x * x) + (y * y);
        return Similarity.Taking(((x * u) + (y * v)) / square, ((x * v) - (y * u)) / square, (a.X, a.Y), (a.ToX, a.ToY));
    }

    private static Similarity? Solve(IReadOnlyList<PointMatch> matches, double[] weights, double usualScale)
    {
        double w = 0, mx = 0, my = 0, nx = 0, ny = 0;
        for (var i = 0; i < weights.Length; i++)
        {
            w += weights[i];
            mx += weights[i] * matches[i].X;
            my += weights[i] * matches[i].Y;
            nx += weights[i] * matches[i].ToX;
            ny += weights[i] * matches[i].ToY;
        }

        if (w <= 0) return null;
        (mx, my, nx, ny) = (mx / w, my / w, nx / w, ny / w);
        double square = 0, along = 0, across = 0;
        for (var i = 0; i < weights.Length; i++)
        {
            var (x, y, u, v) = (matches[i].X - mx, matches[i].Y - my, matches[i].ToX - nx, matches[i].ToY - ny);
            square += weights[i] * ((x * x) + (y * y));
            along += weights[i] * ((x * u) + (y * v));
            across += weights[i] * ((x * v) - (y * u));
        }

        if (square <= 1e-9) return null;
        var (a, b) = (along / square, across / square);
        // A pixel's doubt a match against what the scale is known by beforehand.
        var scale = Math.Sqrt((a * a) + (b * b));
        var known = 1 / (usualScale * usualScale);
        var drawn = ((square * scale) + known) / (square + known) / scale;
        (a, b) = (a * drawn, b * drawn);
        return Similarity.Taking(a, b, (mx, my), (nx, ny));
    }
}
