using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Boards.Finding.Matching;

/// <summary>
/// Two pictures of one side agree in what stands on the board as well, a little beside where the board itself has it: of the views that small
/// sets of agreeing marks make, the one that most holes keep to closely is the board's. Seeded.
/// </summary>
internal static class FlatPlane
{
    private const int Trials = 500;
    private const int Each = 5;

    /// <summary>The board's view; the one given where no other is kept to better.</summary>
    public static Matrix3 Of(MarkField first, MarkField second, IReadOnlyList<(int From, int To)> pairs, Matrix3 map, double tolerance)
    {
        if (pairs.Count <= Each + 1) return map;
        var random = new SeedRandom(2);
        var all = pairs.Select(pair => (first.Marks[pair.From].At, second.Marks[pair.To].At, 1.0)).ToList();
        double[] worth = [.. pairs.Select(pair => Worth(first.Marks[pair.From]) + Worth(second.Marks[pair.To]))];
        var (best, most) = (map, Kept(map));
        var some = new List<(PicturePoint, PicturePoint, double)>(Each);
        for (var trial = 0; trial < Trials; trial++)
        {
            some.Clear();
            while (some.Count < Each)
            {
                var one = all[random.Below(all.Count)];
                if (!some.Contains(one)) some.Add(one);
            }

            // All of the few count in full: the tolerance lies far beyond what they could be off.
            if (ViewFit.Of(some, map, first.Extent, 40 * tolerance) is not { } guess) continue;
            var kept = Kept(guess);
            if (kept > most) (best, most) = (guess, kept);
        }

        return best;

        double Kept(Matrix3 by)
        {
            var (view, sum) = (new Projective("a", "b", by), 0.0);
            for (var i = 0; i < all.Count; i++)
            {
                var share = view.Map(all[i].Item1).DistanceTo(all[i].Item2) / tolerance;
                if (share < 1) sum += worth[i] * (1 - (share * share));
            }

            return sum;
        }
    }

    // A ring is a plated hole and flat; a bright disc may be a lamp's top or a dot on a chip.
    private static double Worth(FoundMark mark) => mark.Sort switch { MarkSort.Ring => 4, MarkSort.Dark => 1, _ => 0.7 };
}
