using OpenCvSharp;

namespace Lidoff.Seeing.Composing;

/// <summary>
/// Finds how two tiles lie on one another: features give places where they may, blocks of the overlap say which of them holds and refine
/// it. A row of equal parts fits at every one of its periods; whether the overlap holds anything that tells them apart is what is asked
/// here, block by block, and not how high a peak is.
/// </summary>
internal static class PairFinder
{
    private const int Nearest = 12;
    private const float MostApart = 280;
    private const int FewestAgreeing = 8;
    private const int MostTries = 4;
    private const int MostOwn = 2;
    private const int MostPeriods = 14;
    private const double LongestPeriod = 0.2;
    private const float Distinct = 0.8f;

    private const int Side = 40;
    private const int Reach = 10;
    private const int MostBlocks = 140;
    private const int FewestBlocks = 6;

    /// <summary>The pair; null where the two show nothing in common.</summary>
    public static TilePair? Of(Tile first, Tile second)
    {
        var tried = Proposed(first, second).Select(map => Refined(first, second, map)).OfType<Lying>().OrderByDescending(each => each.Worth).ToList();
        if (tried.Count == 0) return null;
        var best = Champion(first, second, tried);
        // Where features gave one place only, the overlap is looked through for more.
        tried.AddRange(PeriodSearch.Of(first, second, best.Map).Select(map => Refined(first, second, map)).OfType<Lying>());
        best = Champion(first, second, [best, .. tried]);
        // Where it fits one period off, it may lie any number of periods off.
        tried.AddRange(Along(first, second, best, tried));
        best = Champion(first, second, [best, .. tried]);
        var others = new List<Similarity>();
        var open = false;
        foreach (var map in tried.Select(each => each.Map))
        {
            if (Same(best.Map, map, second) || others.Exists(other => Same(other, map, second))) continue;
            var (on, against) = BlockVote.Between(first, second, best.Map, map);
            others.Add(map);
            open |= on < BlockVote.Enough || on < 3 * against;
        }

        return new(first.Number, second.Number, best.Map, best.Matches, best.Rms, others, open);
    }

    /// <summary>Places whole periods off, over the length of the tile, where one period is the least shift at which it fits too.</summary>
    private static List<Lying> Along(Tile first, Tile second, Lying best, List<Lying> tried)
    {
        var shifts = tried.Where(each => !Same(best.Map, each.Map, second)).Select(each => (X: each.Map.X - best.Map.X, Y: each.Map.Y - best.Map.Y, each.Map)).ToList();
        if (shifts.Count == 0) return [];
        var (x, y, _) = shifts.MinBy(shift => (shift.X * shift.X) + (shift.Y * shift.Y));
        if (Math.Sqrt((x * x) + (y * y)) > LongestPeriod * first.Grey.Width) return [];
        return [.. Enumerable.Range(1, MostPeriods).SelectMany(k => new[] { k, -k })
            .Select(k => best.Map with { X = best.Map.X + (k * x), Y = best.Map.Y + (k * y) })
            .Where(map => shifts.TrueForAll(shift => !Same(shift.Map, map, second)))
            .Select(map => Refined(first, second, map)).OfType<Lying>()];
    }

    /// <summary>The place that no other one outvotes, block by block.</summary>
    private static Lying Champion(Tile first, Tile second, List<Lying> tried)
    {
        var best = tried[0];
        foreach (var other in tried.Skip(1))
        {
            if (Same(best.Map, other.Map, second)) continue;
            var (on, against) = BlockVote.Between(first, second, best.Map, other.Map);
            if (against > on) best = other;
        }

        return best;
    }

    /// <summary>The pair with the second tile at a place that something else than the two of them chose; null where it does not fit there.</summary>
    public static TilePair? At(Tile first, Tile second, Similarity map) =>
        Refined(first, second, map) is { } lying ? new(first.Number, second.Number, lying.Map, lying.Matches, lying.Rms, [], false) : null;

    private static bool Same(Similarity a, Similarity b, Tile second)
    {
        var ((x, y), (u, v)) = (a.Apply(second.Grey.Width / 2.0, second.Grey.Height / 2.0), b.Apply(second.Grey.Width / 2.0, second.Grey.Height / 2.0));
        return ((x - u) * (x - u)) + ((y - v) * (y - v)) < 16;
    }

    /// <summary>Maps that many features agree on, most first; each is looked for among what the ones before left over.</summary>
    private static List<Similarity> Proposed(Tile first, Tile second)
    {
        if (first.Places.Length < FewestAgreeing || second.Places.Length < FewestAgreeing) return [];
        using var matcher = new BFMatcher(NormTypes.L2);
        // Of equal parts every one is as near as the next: all are taken. Where one is clearly nearest, only that one.
        var nearest = matcher.KnnMatch(second.Features, first.Features, Nearest);
        List<(PointMatch, int)> own = [.. nearest.Where(near => near.Length < 2 || near[0].Distance < Distinct * near[1].Distance).Select(near => Offered(near[0]))];
        var all = nearest.SelectMany(near => near.Where((match, i) => match.Distance < MostApart && (i == 0 || match.Distance < (near[0].Distance * 1.2f) + 15)))
            .Select(Offered).ToList();
        // What has no double says most; a long row would drown it.
        return [.. SimilaritySearch.Of(own, MostOwn, FewestAgreeing), .. SimilaritySearch.Of(all, MostTries, FewestAgreeing)];

        (PointMatch, int) Offered(DMatch match)
        {
            var (from, to) = (second.Places[match.QueryIdx].Pt, first.Places[match.TrainIdx].Pt);
            return (new(from.X, from.Y, to.X, to.Y, -match.Distance), match.QueryIdx);
        }
    }

    private sealed record Lying(Similarity Map, IReadOnlyList<PointMatch> Matches, double Rms)
    {
        public double Worth => Matches.Count;
    }

    /// <summary>A map made finer by blocks of the overlap; null where too few of them are found again.</summary>
    private static Lying? Refined(Tile first, Tile second, Similarity map)
    {
        Lying? found = null;
        for (var round = 0; round < 2; round++)
        {
            using var shared = Overlap.Of(first, second, map);
            if (shared is null) return null;
            var places = Blocks.Places(shared.Second, Side, MostBlocks, shared.Mask);
            var matches = Blocks.Match(shared.Second, shared.First, places, Side, round == 0 ? Reach : 5, 0.6);
            if (matches.Count < Math.Max(FewestBlocks, places.Count / 3)) return null;
            var back = map.Inverse();
            // From here on between the second tile's own places and the first's.
            var own = matches.ConvertAll(match =>
            {
                var (x, y) = back.Apply(match.X + shared.Box.X, match.Y + shared.Box.Y);
                return match with { X = x, Y = y, ToX = match.ToX + shared.Box.X, ToY = match.ToY + shared.Box.Y };
            });
            if (BoardPlane.Of(own, second.Grey.Width / 2.0, second.Grey.Height / 2.0, FewestBlocks) is not { } fit) return null;
            map = fit.Map;
            found = new(map, fit.Kept, fit.Rms);
        }

        return found is not null && BlockVote.Holds(first, second, found.Map) ? found : null;
    }
}
