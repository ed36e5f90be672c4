using Lidoff.Seeing.Rendering;

namespace Lidoff.Seeing.Composing;

/// <summary>
/// Maps that many of a heap of possible matches agree on. Two matches make a map; only maps near the scale 1 are tried, and a place counts
/// once however many partners it was offered, so that a row of equal parts cannot be heaped onto one of them. The same heap gives the
/// same maps: what is drawn comes out of its own numbers.
/// </summary>
internal static class SimilaritySearch
{
    private const int Draws = 6000;
    private const int FirstLook = 200;
    private const double Near = 4;
    private const double LeastApart = 30;
    private const double MostZoom = 1.1;

    /// <summary>Up to <paramref name="most"/> maps with at least <paramref name="fewest"/> places behind them, each looked for in what the ones before left over.</summary>
    public static List<Similarity> Of(IReadOnlyList<(PointMatch Match, int From)> offered, int most, int fewest)
    {
        var left = offered.ToList();
        var maps = new List<Similarity>();
        while (maps.Count < most && left.Count >= fewest)
        {
            var best = (Map: Similarity.Identity, Count: 0);
            var stride = Math.Max(1, left.Count / FirstLook);
            for (var draw = 0; draw < Draws; draw++)
            {
                var a = left[(int)(Scatter.Even(17, draw, maps.Count) * left.Count)].Match;
                var b = left[(int)(Scatter.Even(18, draw, maps.Count) * left.Count)].Match;
                if (Through(a, b) is not { } map) continue;
                // A first look at some of them: most draws are nothing.
                if (stride > 1 && Count(left, map, stride) * stride < best.Count / 2) continue;
                var count = Count(left, map, 1);
                if (count > best.Count) best = (map, count);
            }

            if (best.Count < fewest) break;
            var agreeing = left.Where(each => SimilarityFit.Away(best.Map, each.Match) < Near).ToList();
            if (SimilarityFit.To([.. agreeing.Select(each => each.Match)], 1.5) is { } fit && fit.Map.Scale is < MostZoom and > 1 / MostZoom) maps.Add(fit.Map);
            left = [.. left.Except(agreeing)];
        }

        return maps;
    }

    private static Similarity? Through(PointMatch a, PointMatch b)
    {
        var (x, y) = (b.X - a.X, b.Y - a.Y);
        if ((x * x) + (y * y) < LeastApart * LeastApart) return null;
        var map = SimilarityFit.Through(a, b);
        return map.Scale is > MostZoom or < 1 / MostZoom ? null : map;
    }

    private static int Count(List<(PointMatch Match, int From)> left, Similarity map, int stride)
    {
        // Offers of one place stand one after the other.
        var (count, last) = (0, -1);
        for (var i = 0; i < left.Count; i += stride)
        {
            var (match, from) = left[i];
            if (from == last) continue;
            var (x, y) = map.Apply(match.X, match.Y);
            if (Math.Abs(x - match.ToX) >= Near || Math.Abs(y - match.ToY) >= Near) continue;
            count++;
            last = from;
        }

        return count;
    }
}
