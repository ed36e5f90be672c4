namespace Lidoff.Seeing.Measuring.Rulers;

/// <summary>
/// Every how many lines of a ruler one is longer: aside from the row, where only longer lines still show, the ink repeats with that many. Lines are followed outwards as they lean, which at a
/// slant differs along the ruler.
/// </summary>
internal static class LongerLines
{
    private static readonly int[] Everies = [2, 4, 5, 8, 10, 16, 32, 64];

    // A line that is followed still has so much of its ink, and is looked for within so much of a period.
    private const double StillInk = 0.5;
    private const double Near = 0.25;

    // A line that was gone for more steps outwards has ended: what shows beyond it is a numeral.
    private const double Gone = 0.3;
    private const int MostMissed = 1;

    // Lean of the lines before any is followed: a ruler's stand square to its row but for the slant, which leans them by a tenth or two.
    private const double Lean = 0.2;

    /// <summary>The numbers, in order.</summary>
    public static List<int> Every(RulerTrack track, RuledRow row)
    {
        var period = (int)Math.Round(row.Step);
        // Ink is darker than what is around it, or brighter; what is the other way is none.
        var level = RulerTrack.Flat(track.Profile(0), period);
        var sign = row.Numbers.Sum(number => level[Math.Clamp((int)Math.Round(row.Place(number)), 0, level.Length - 1)]) < 0 ? -1 : 1;
        var full = Depths(Inked(level), row, number => row.Place(number)).Average(each => each.Depth);
        var found = new SortedSet<int>();
        foreach (var way in new[] { 1, -1 })
        {
            var lean = new LeanFit(row);
            var missed = new Dictionary<int, int>();
            // An inch's own line is a centimetre long, which is twenty-five lines of a sixty-fourth.
            for (var aside = 2.0; aside <= 28 * row.Step * RulerTrack.Step; aside += Math.Max(1, row.Step * RulerTrack.Step / 6))
            {
                var profile = Inked(RulerTrack.Flat(track.Profile(way * aside), period));
                var seen = Depths(profile, row, number => row.Place(number) + (way * aside * lean.At(number))).ToArray();
                foreach (var (number, depth, place) in seen)
                {
                    if (depth > StillInk * full && missed.GetValueOrDefault(number) <= MostMissed) lean.Add(number, way * aside, place - row.Place(number));
                    if (depth < Gone * full) missed[number] = missed.GetValueOrDefault(number) + 1;
                    else if (missed.GetValueOrDefault(number) <= MostMissed) missed[number] = 0;
                }

                lean.Settle();
                var depths = seen.Select(each => (each.Number, Depth: missed[each.Number] > MostMissed ? 0 : each.Depth)).OrderBy(each => each.Depth).ToArray();
                // Beyond the longest lines there is nothing to be told apart.
                if (depths[^1].Depth <= 0.4 * full) continue;
                found.UnionWith(Everies.Where(every => !found.Contains(every) && row.Count >= 2 * every && StandsOut(depths, every, full)));
            }
        }

        return [.. found];

        float[] Inked(float[] flat) => Array.ConvertAll(flat, value => Math.Max(0, sign * value));
    }

    // How deep the ink is about where each line should be, and where in that it is deepest.
    private static IEnumerable<(int Number, double Depth, double Place)> Depths(float[] profile, RuledRow row, Func<int, double> place)
    {
        foreach (var number in row.Numbers)
        {
            var (at, reach) = (place(number), Near * row.Period(number));
            var middle = (int)Math.Round(at);
            var (depth, best) = (0.0, middle);
            for (var i = Math.Max(0, (int)Math.Ceiling(at - reach)); i <= Math.Min(profile.Length - 1, (int)(at + reach)); i++) if (profile[i] > depth) (depth, best) = (profile[i], i);
            // What stands out a little aside is followed, and counts as far as it shows where the line should be.
            var here = Math.Max(Ink(middle), Math.Max(Ink(middle - 1), Ink(middle + 1)));
            yield return (number, here, depth > 0 ? best : at);
        }

        double Ink(int i) => profile[Math.Clamp(i, 0, profile.Length - 1)];
    }

    /// <summary>
    /// Whether, at some phase, each <paramref name="every"/>-th line still shows where the others do not, and above all where those halfway between
    /// do not: of lines that are longer at every eighth each sixteenth stands out as well. One in five may be hidden or beside a numeral.
    /// </summary>
    private static bool StandsOut((int Number, double Depth)[] sorted, int every, double full)
    {
        for (var phase = 0; phase < every; phase++)
        {
            var count = sorted.Count(each => Of(each.Number, phase) == 0);
            if (count < 2) continue;
            var on = Place(each => each == 0, 1, phase);
            if (on - Place(each => each != 0, 4, phase) > 0.4 * full && (every % 2 != 0 || on - Place(each => each == every / 2, 4, phase) > 0.4 * full)) return true;
        }

        return false;

        int Of(int number, int phase) => (((number - phase) % every) + every) % every;

        // The depth below which so many fifths of a group lie; nothing where the group is empty.
        double Place(Func<int, bool> group, int fifths, int phase)
        {
            var place = sorted.Count(each => group(Of(each.Number, phase))) * fifths / 5;
            foreach (var (number, depth) in sorted) if (group(Of(number, phase)) && place-- == 0) return depth;
            return 0;
        }
    }

    /// <summary>How the lines lean, steps along the row for each px aside, and how that changes along the row.</summary>
    private sealed class LeanFit(RuledRow row)
    {
        private readonly double middle = (row.First + row.Last) / 2.0, half = Math.Max(1, (row.Last - row.First) / 2.0);
        private double n, nm, nmm, x, xm;
        private double lean, change;

        public double At(int number) => lean + (change * (number - middle) / half);

        public void Add(int number, double aside, double moved)
        {
            var m = (number - middle) / half;
            (n, nm, nmm) = (n + (aside * aside), nm + (aside * aside * m), nmm + (aside * aside * m * m));
            (x, xm) = (x + (aside * moved), xm + (aside * moved * m));
        }

        // Least squares of moved = aside·(lean + change·m), drawn to nought as long as little was seen: half a step is what one line's place is known to.
        public void Settle()
        {
            const double prior = 0.25 / (Lean * Lean / (RulerTrack.Step * RulerTrack.Step));
            var (a, d) = (n + prior, nmm + prior);
            var det = (a * d) - (nm * nm);
            (lean, change) = (((d * x) - (nm * xm)) / det, ((a * xm) - (nm * x)) / det);
        }
    }
}
