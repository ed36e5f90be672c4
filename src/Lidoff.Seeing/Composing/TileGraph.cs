using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Spreads;

namespace Lidoff.Seeing.Composing;

/// <summary>
/// Which pairs are believed. Pairs whose overlap alone does not tell a period of a repeat pattern are settled by the loops they close, or
/// the tiles are refused; a loop that does not close is mended where exactly one pair mends it, or the tiles are refused.
/// </summary>
internal sealed class TileGraph(IReadOnlyList<Tile> tiles, IReadOnlyList<TilePair> found)
{
    // What a chain of pairs may miss by, of a sheet's width: lenses, slants and what stands up bend each pair a little.
    private const double MayMiss = 0.008;

    // A pair of far fewer matches than most hangs on one thing in a corner, which may stand up.
    private const double Weak = 0.6;

    private double Closes => Math.Max(6, MayMiss * tiles[0].Grey.Width);

    private readonly List<TilePair> pairs = [.. found.Where(pair => !pair.Open)];
    private readonly List<string> says = [];

    /// <summary>The pairs to go by and what is to be said of them.</summary>
    public (IReadOnlyList<TilePair> Pairs, IReadOnlyList<string> Says) Settle()
    {
        var open = found.Where(pair => pair.Open).OrderByDescending(pair => pair.Matches.Count).ThenBy(pair => pair.First).ThenBy(pair => pair.Second).ToList();
        while (open.Count > 0)
        {
            var joined = open.FirstOrDefault(pair => Group(pair.First) == Group(pair.Second));
            if (joined is not null)
            {
                // What the other tiles say of this pair chooses between its places.
                var at = Predicted(joined);
                if (Places(joined).Where(map => Apart(map, at, joined) < Closes).Cast<Similarity?>().FirstOrDefault() is { } right && Remade(joined, right) is { } settled) pairs.Add(settled);
                open.Remove(joined);
                continue;
            }

            if (Together(open) is not { } settledTogether) Refuse(open[0]);
            else
            {
                foreach (var pair in settledTogether) pairs.Add(pair);
                open.RemoveAll(pair => settledTogether.Exists(each => (each.First, each.Second) == (pair.First, pair.Second)));
            }
        }

        if (Enumerable.Range(1, tiles.Count - 1).Where(k => Group(k) != Group(0)).ToList() is { Count: > 0 } apart)
        {
            var few = apart.Count * 2 > tiles.Count ? [.. Enumerable.Range(0, tiles.Count).Except(apart)] : apart;
            throw new RefusedException(new Fault("pictures", "tiles that overlap", ComposingSentences.NoOverlap([.. few.Select(k => tiles[k].Source.Name)])));
        }

        Mend();
        return (pairs, says);
    }

    /// <summary>How far the worst loop of pairs is from closing, px of the sheets, some pairs left aside; null where no loop closes.</summary>
    public double? Loop(IReadOnlyList<TilePair> without) => Loops([.. pairs.Except(without)]) is { Count: > 0 } loops ? loops.Max(loop => loop.Px) : null;

    private void Refuse(TilePair pair) => throw new RefusedException(new Fault("pictures", "an overlap that tells one period from the next", ComposingSentences.RepeatOpen(
        tiles[pair.First].Source.Name, tiles[pair.Second].Source.Name, pair.RivalAway(tiles[pair.Second].Grey.Width / 2.0, tiles[pair.Second].Grey.Height / 2.0) * tiles[pair.First].Times)));

    /// <summary>Two or more open pairs between the same two groups of tiles, where one choice of places alone fits all of them.</summary>
    private List<TilePair>? Together(List<TilePair> open)
    {
        foreach (var bundle in open.GroupBy(pair => (Math.Min(Group(pair.First), Group(pair.Second)), Math.Max(Group(pair.First), Group(pair.Second)))).Where(bundle => bundle.Count() > 1))
        {
            var anchor = bundle.First();
            var fitting = Places(anchor).Where(map =>
            {
                List<TilePair> with = [.. pairs, anchor with { Map = map }];
                return bundle.Skip(1).All(pair => Places(pair).Any(place => Apart(place, Predicted(pair, with), pair) < Closes));
            }).ToList();
            if (fitting.Count != 1) continue;
            List<TilePair> all = [.. pairs, anchor with { Map = fitting[0] }];
            var settled = bundle.Select(pair => Remade(pair, Places(pair).MinBy(place => Apart(place, Predicted(pair, all), pair)))).OfType<TilePair>().ToList();
            if (settled.Count == bundle.Count()) return settled;
        }

        return null;
    }

    /// <summary>Mends loops that do not close, or refuses: by one pair that lies at another of its places, by one that may go, by weak ones that may go.</summary>
    private void Mend()
    {
        if (Closed(pairs) || MendOne()) return;
        DropWeak();
        if (Closed(pairs) || MendOne()) return;
        var worst = Loops(pairs).MaxBy(loop => loop.Px);
        throw new RefusedException(new Fault("pictures", "tiles whose loops close", ComposingSentences.LoopOpen(tiles[worst.Pair.First].Source.Name, tiles[worst.Pair.Second].Source.Name, worst.Px * tiles[0].Times)));
    }

    private bool Closed(List<TilePair> with) => Loops(with).TrueForAll(loop => loop.Px < Closes);

    private bool MendOne()
    {
        var swaps = new List<(int Pair, TilePair Other)>();
        for (var i = 0; i < pairs.Count; i++)
        {
            foreach (var other in pairs[i].Others)
            {
                List<TilePair> tried = [.. pairs];
                tried[i] = tried[i] with { Map = other };
                if (Closed(tried) && Remade(pairs[i], other) is { } remade) swaps.Add((i, remade));
            }
        }

        if (swaps.Count == 1)
        {
            var (at, other) = swaps[0];
            says.Add(ComposingSentences.PeriodMended(tiles[other.First].Source.Name, tiles[other.Second].Source.Name));
            pairs[at] = other;
            return true;
        }

        // A pair that is contradicted from two sides at once may go; one that only one loop speaks against may be the right one.
        var drops = pairs.Where(pair => pairs.Where(each => each != pair).ToList() is var rest && Closed(rest) && TwiceJoined(pair.First, pair.Second, rest)).ToList();
        if (swaps.Count > 0 || drops.Count != 1) return false;
        says.Add(ComposingSentences.PairDropped(tiles[drops[0].First].Source.Name, tiles[drops[0].Second].Source.Name));
        pairs.Remove(drops[0]);
        return true;
    }

    /// <summary>Lets go of weak pairs that others, two ways round, contradict.</summary>
    private void DropWeak()
    {
        var usual = Statistics.Median(pairs.Select(pair => (double)pair.Matches.Count));
        while (Loops(pairs).Where(loop => loop.Px >= Closes && loop.Pair.Matches.Count < Weak * usual).OrderByDescending(loop => loop.Px).Select(loop => loop.Pair).FirstOrDefault() is { } pair
            && TwiceJoined(pair.First, pair.Second, [.. pairs.Where(each => each != pair)]))
        {
            says.Add(ComposingSentences.PairDropped(tiles[pair.First].Source.Name, tiles[pair.Second].Source.Name));
            pairs.Remove(pair);
        }
    }

    private static bool TwiceJoined(int a, int b, List<TilePair> rest) => rest.All(without => Joined(a, b, [.. rest.Where(pair => pair != without)]));

    private static bool Joined(int a, int b, List<TilePair> with) => Placed(a, with).ContainsKey(b);

    /// <summary>Every pair that a tree of the strongest ones does not need, and how far it misses what the tree says.</summary>
    private List<(TilePair Pair, double Px)> Loops(List<TilePair> with)
    {
        var tree = Tree(with);
        return [.. with.Where(pair => !tree.Contains(pair)).Select(pair => (pair, Apart(pair.Map, Predicted(pair, tree), pair)))];
    }

    private List<TilePair> Tree(List<TilePair> with)
    {
        var group = Enumerable.Range(0, tiles.Count).ToArray();
        var tree = new List<TilePair>();
        foreach (var pair in with.OrderByDescending(each => each.Matches.Count).ThenBy(each => each.First).ThenBy(each => each.Second))
        {
            var (a, b) = (group[pair.First], group[pair.Second]);
            if (a == b) continue;
            tree.Add(pair);
            for (var k = 0; k < group.Length; k++) if (group[k] == b) group[k] = a;
        }

        return tree;
    }

    private int Group(int tile) => Placed(tile, pairs).Keys.Min();

    private Similarity Predicted(TilePair pair) => Predicted(pair, Tree(pairs));

    private static Similarity Predicted(TilePair pair, List<TilePair> with) => Placed(pair.First, with).TryGetValue(pair.Second, out var map) ? map : new(0, 0, double.MaxValue, 0);

    /// <summary>Maps onto one tile of every tile that pairs lead to.</summary>
    public static Dictionary<int, Similarity> Placed(int from, List<TilePair> with)
    {
        var placed = new Dictionary<int, Similarity> { [from] = Similarity.Identity };
        for (var grew = true; grew;)
        {
            grew = false;
            foreach (var pair in with)
            {
                if (placed.TryGetValue(pair.First, out var first) && !placed.ContainsKey(pair.Second)) (placed[pair.Second], grew) = (first.After(pair.Map), true);
                else if (placed.TryGetValue(pair.Second, out var second) && !placed.ContainsKey(pair.First)) (placed[pair.First], grew) = (second.After(pair.Map.Inverse()), true);
            }
        }

        return placed;
    }

    private static IEnumerable<Similarity> Places(TilePair pair) => pair.Others.Prepend(pair.Map);

    private static double Apart(Similarity a, Similarity b, TilePair pair)
    {
        // In the middle of what the two share: what a pair knows, and not what it would mean far away from there.
        var (cx, cy) = (pair.Matches.Average(match => match.X), pair.Matches.Average(match => match.Y));
        var ((x, y), (u, v)) = (a.Apply(cx, cy), b.Apply(cx, cy));
        return Math.Sqrt(((x - u) * (x - u)) + ((y - v) * (y - v)));
    }

    private TilePair? Remade(TilePair pair, Similarity map) => map == pair.Map ? pair with { Open = false } : PairFinder.At(tiles[pair.First], tiles[pair.Second], map);
}
