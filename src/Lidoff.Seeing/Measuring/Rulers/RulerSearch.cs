using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Measuring.Edges;

namespace Lidoff.Seeing.Measuring.Rulers;

/// <summary>
/// Finds evenly spaced lines along a row that somebody pointed out: the brightness along it repeats with their period (its
/// autocorrelation), each line's place is then the middle of its ink, and a straight line of place against number tells period and doubt.
/// </summary>
internal static class RulerSearch
{
    // Brightness is taken every half pixel, averaged over a few pixels across the row.
    private const double Step = 0.5;
    private const int Across = 2;

    private const int LeastLines = 8;
    private const double LeastPeriodPx = 3;

    private static readonly int[] Everies = [2, 4, 5, 8, 10, 16, 32, 64];

    // Of the repeats that are nearly as good as the best, the shortest is the period: twice it repeats as well.
    private const double NearlyAsGood = 0.75;
    private const double LeastLikeness = 0.3;

    /// <summary>The lines, or null where nothing repeats evenly along the row, or fewer lines than wanted do; which of them are longer is left open where that is not asked for.</summary>
    public static FoundRuler? Find(GreyPicture grey, PicturePoint from, PicturePoint to, int least = LeastLines, bool longer = true)
    {
        var (x, y) = (from.X / grey.PxPerPx, from.Y / grey.PxPerPx);
        var length = from.DistanceTo(to) / grey.PxPerPx;
        var (dx, dy) = ((to.X - from.X) / grey.PxPerPx / length, (to.Y - from.Y) / grey.PxPerPx / length);
        var count = (int)(length / Step) + 1;
        if (count < 3 * LeastLines) return null;
        var raw = Profile(grey, x, y, dx, dy, count, 0);
        if (Period(raw) is not { } period) return null;
        var ink = Flat(raw, (int)Math.Round(period));
        // Lines are dark on light, or light on dark: whichever is the narrower part.
        if (ink.Count(value => value > 0) < ink.Length / 2.0) ink = [.. ink.Select(value => -value)];
        var lines = Lines(ink, period);
        if (lines.Count < Math.Max(LeastLines, least)) return null;
        var (offset, step, scatter) = Straight(lines);
        if (scatter > 0.12 * period) return null;
        var gaps = lines[^1].Number - lines[0].Number;
        var (first, last) = ((offset + (step * lines[0].Number)) * Step, (offset + (step * lines[^1].Number)) * Step);
        // The ends of a fitted line through n points are known to 2·s/√n; the grid of pixels leaves a twentieth.
        var end = Math.Max(0.05, 2 * scatter * Step / Math.Sqrt(lines.Count)) * grey.PxPerPx;
        return new(
            new((x + (first * dx)) * grey.PxPerPx, (y + (first * dy)) * grey.PxPerPx),
            new((x + (last * dx)) * grey.PxPerPx, (y + (last * dy)) * grey.PxPerPx),
            gaps, end, longer ? LongEvery(grey, x, y, dx, dy, offset, step, lines, period) : []);
    }

    private static float[] Profile(GreyPicture grey, double x, double y, double dx, double dy, int count, double aside)
    {
        var profile = new float[count];
        for (var i = 0; i < count; i++)
        {
            for (var j = -Across; j <= Across; j++) profile[i] += grey.Between(x + (i * Step * dx) - ((j + aside) * dy), y + (i * Step * dy) + ((j + aside) * dx)) / ((2 * Across) + 1);
        }

        return profile;
    }

    /// <summary>The profile without slow changes of light.</summary>
    private static float[] Flat(float[] raw, int window)
    {
        var flat = new float[raw.Length];
        for (var i = 0; i < raw.Length; i++)
        {
            var (low, high) = (Math.Max(0, i - window), Math.Min(raw.Length - 1, i + window));
            var sum = 0f;
            for (var k = low; k <= high; k++) sum += raw[k];
            flat[i] = raw[i] - (sum / (high - low + 1));
        }

        return flat;
    }

    /// <summary>The shortest repeat that is nearly as good as the best, in half pixels.</summary>
    private static double? Period(float[] raw)
    {
        var most = raw.Length / (LeastLines - 1);
        var flat = Flat(raw, Math.Max(8, most / 2));
        var power = flat.Sum(value => (double)value * value) / flat.Length;
        if (power < 4) return null;
        var likeness = new double[most + 2];
        for (var lag = 1; lag < likeness.Length; lag++)
        {
            var sum = 0.0;
            for (var i = 0; i + lag < flat.Length; i++) sum += (double)flat[i] * flat[i + lag];
            likeness[lag] = sum / (flat.Length - lag) / power;
        }

        var peaks = Enumerable.Range((int)(LeastPeriodPx / Step), Math.Max(0, most - (int)(LeastPeriodPx / Step)))
            .Where(lag => likeness[lag] > LeastLikeness && likeness[lag] >= likeness[lag - 1] && likeness[lag] >= likeness[lag + 1]).ToList();
        if (peaks.Count == 0) return null;
        var best = peaks.Max(lag => likeness[lag]);
        var first = peaks.First(lag => likeness[lag] > NearlyAsGood * best);
        // The top of a parabola through the peak and its neighbours.
        var (a, b, c) = (likeness[first - 1], likeness[first], likeness[first + 1]);
        return first + ((a - c) / (2 * Math.Min(-1e-12, a - (2 * b) + c)));
    }

    /// <summary>Middles of the ink, each with its number, in half pixels.</summary>
    private static List<(int Number, double Place)> Lines(float[] ink, double period)
    {
        var deepest = ink.Min();
        var middles = new List<double>();
        for (var i = 0; i < ink.Length; i++)
        {
            if (ink[i] > 0.35f * deepest) continue;
            var (weight, sum) = (0.0, 0.0);
            for (; i < ink.Length && ink[i] <= 0.35f * deepest; i++) (weight, sum) = (weight - ink[i], sum - (ink[i] * i));
            middles.Add(sum / weight);
        }

        var lines = new List<(int Number, double Place)>();
        foreach (var middle in middles)
        {
            if (lines.Count == 0)
            {
                lines.Add((0, middle));
                continue;
            }

            // Counted on from the line before, so that a perspective's slow change of the period adds up without a slip.
            var gaps = (int)Math.Round((middle - lines[^1].Place) / period);
            if (gaps == 0 || Math.Abs(middle - lines[^1].Place - (gaps * period)) > 0.3 * period) continue;
            lines.Add((lines[^1].Number + gaps, middle));
        }

        return lines;
    }

    private static (double Offset, double Step, double Scatter) Straight(List<(int Number, double Place)> lines)
    {
        var (n, p) = (lines.Average(line => (double)line.Number), lines.Average(line => line.Place));
        var step = lines.Sum(line => (line.Number - n) * (line.Place - p)) / lines.Sum(line => (line.Number - n) * (line.Number - n));
        var offset = p - (step * n);
        return (offset, step, Math.Sqrt(lines.Sum(line => (line.Place - offset - (step * line.Number)) * (line.Place - offset - (step * line.Number))) / Math.Max(1, lines.Count - 2)));
    }

    /// <summary>Every how many lines one is longer: aside from the row, where only longer lines still show, the ink repeats with that many.</summary>
    private static List<int> LongEvery(GreyPicture grey, double x, double y, double dx, double dy, double offset, double step, List<(int Number, double Place)> lines, double period)
    {
        var count = (int)(lines[^1].Place + period);
        var full = Depths(0).Average(each => each.Depth);
        var found = new SortedSet<int>();
        foreach (var aside in Asides(period))
        {
            var depths = Depths(aside).OrderBy(each => each.Depth).ToArray();
            // Beyond the longest lines there is nothing to be told apart.
            if (depths[^1].Depth <= 0.4 * full) continue;
            found.UnionWith(Everies.Where(every => !found.Contains(every) && lines.Count >= 2 * every && StandsOut(depths, every, full)));
        }

        return [.. found];

        List<(int Number, double Depth)> Depths(double aside)
        {
            var profile = Flat(Profile(grey, x, y, dx, dy, count, aside), (int)Math.Round(period));
            return [.. lines.Select(line => (line.Number, (double)Math.Abs(profile[Math.Clamp((int)Math.Round(offset + (step * line.Number)), 0, count - 1)])))];
        }
    }

    private static IEnumerable<double> Asides(double period)
    {
        // An inch's own line is a centimetre long, which is twenty-five lines of a sixty-fourth.
        for (var aside = 2.0; aside <= 28 * period * Step; aside += Math.Max(1, period * Step / 6))
        {
            yield return aside;
            yield return -aside;
        }
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

        int Of(int number, int phase) => (number - phase + every) % every;

        // The depth below which so many fifths of a group lie; nothing where the group is empty.
        double Place(Func<int, bool> group, int fifths, int phase)
        {
            var place = sorted.Count(each => group(Of(each.Number, phase))) * fifths / 5;
            foreach (var (number, depth) in sorted) if (group(Of(number, phase)) && place-- == 0) return depth;
            return 0;
        }
    }
}
