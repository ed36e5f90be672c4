using Lidoff.Evidence.Pictures;
using Lidoff.Numbers;
using Lidoff.Seeing.Boards.Finding;
using Lidoff.Seeing.Measuring.Edges;

namespace Lidoff.Seeing.Measuring.Rulers;

/// <summary>
/// Finds rulers in a whole picture, at any turn: patches whose brightness changes along one direction alone and repeats along it are strung
/// to rows; a row is a ruler where its lines are even and every fifth, tenth, eighth … of them is longer, as pins, cloth and teeth are not.
/// </summary>
internal static class RulerFinder
{
    // A patch, and how far they lie apart, px of what was looked at.
    private const int Patch = 24;
    private const int Stride = 12;

    // How far along a patch looks for what repeats, each way.
    private const double Along = 72;
    private const double Step = 0.5;
    private const double LeastPeriod = 3;
    private const double MostPeriod = 48;

    // Brightness changes along one direction; grain alone makes a quarter.
    private const double LeastCoherence = 0.45;
    private const double LeastSlope = 3;
    private const double LeastLikeness = 0.4;

    // A patch of a row leans and repeats as the one before it does; a slant changes both along the row, at 20° under a wide lens by as much as this in all.
    private const double MostTurn = 0.06;
    private const double MostStretch = 0.12;
    private const double MostTurnInAll = 0.2;
    private const double MostStretchInAll = 0.45;
    private const double Follow = 0.3;

    // A slant along neither the ruler nor its lines leans the lines against the row.
    private static readonly double[] Leans = [0, -0.08, 0.08, -0.16, 0.16];

    // Fewer patches side by side have no longest axis.
    private const int LeastOnAxis = 8;

    // Five lines that are longer, at every fifth: four more among twenty alike would be by chance in a few pictures of pins.
    private const int LeastLines = 23;
    private const int LeastLonger = 5;

    // Lines under scratches and numerals; more of them missing is no row of lines.
    private const double LeastSeen = 0.8;
    // A ruler is among the longest rows of its picture; cloth has hundreds.
    private const int MostRows = 10;

    // Rows beside one another that are asked which of their lines are longer.
    private const int MostRead = 8;

    // Share of the period.
    private const double MostScatter = 0.04;

    // From one of the rows that are read to the next, px of what was looked at.
    private const int Aside = 4;

    private static readonly double[] Times = [1, 2];

    // What repeats beside a row within so many periods is read with it.
    private const double Beside = 8;

    /// <summary>The rulers, those with the most lines first.</summary>
    public static List<FoundRuler> Find(GreyPicture grey)
    {
        var patches = Patches(grey);
        var found = new List<FoundRuler>();
        var used = new bool[patches.Count];
        for (var tried = 0; tried < MostRows; tried++)
        {
            if (Longest(patches, used) is not { Count: > 2 } row) break;
            var direction = Direction(patches, row);
            Use(patches, used, row, direction);
            List<(double X, double Y, double Turn, double Period)> along = [.. row.Select(index => patches[index])];
            var leaning = Leaning(patches, row);
            var length = new PicturePoint(along[0].X, along[0].Y).DistanceTo(new(along[^1].X, along[^1].Y));
            // Within the rows that are read beside one another anyway, the ends of both are the same.
            var far = Math.Abs(Half(leaning - direction)) * length / 2 > Aside;
            if (Farthest(Read(grey, along, direction), far ? Read(grey, along, leaning) : null) is { } ruler && !found.Exists(other => Same(other, ruler))) found.Add(ruler);
        }

        return [.. found.OrderByDescending(ruler => ruler.Gaps)];
    }

    // Longer lines at one end pull the axis of where patches lie by a degree, and a row that runs off the lines loses the last of them; at a slant it is what the lines lean to that is off.
    private static FoundRuler? Farthest(FoundRuler? one, FoundRuler? other) => other is not null && other.Gaps > (one?.Gaps ?? 0) ? other : one;

    private static void Use(List<(double X, double Y, double Turn, double Period)> patches, bool[] used, List<int> row, double direction)
    {
        var (x, y, _, period) = patches[row[row.Count / 2]];
        var (dx, dy) = (Elementary.Cos(direction), Elementary.Sin(direction));
        var reach = row.Max(index => Math.Abs(((patches[index].X - x) * dx) + ((patches[index].Y - y) * dy))) + Patch;
        for (var i = 0; i < patches.Count; i++)
        {
            var (px, py) = (patches[i].X - x, patches[i].Y - y);
            if (Math.Abs((px * -dy) + (py * dx)) < Math.Max(Patch, Beside * period) && Math.Abs((px * dx) + (py * dy)) <= reach) used[i] = true;
        }

        foreach (var index in row) used[index] = true;
    }

    private static List<(double X, double Y, double Turn, double Period)> Patches(GreyPicture grey)
    {
        var patches = new List<(double X, double Y, double Turn, double Period)>();
        // Thin lines between the pixels' own directions would lean a degree or two towards these.
        var (soft, width) = (new SmoothLevel(grey.Width, grey.Height, grey.Values, 1).Blurred(0.8).Values, grey.Width);
        for (var top = 2; top + Patch < grey.Height - 2; top += Stride)
        {
            for (var left = 2; left + Patch < grey.Width - 2; left += Stride)
            {
                var (xx, xy, yy) = (0.0, 0.0, 0.0);
                for (var y = top; y < top + Patch; y++)
                {
                    for (var x = left; x < left + Patch; x++)
                    {
                        var (gx, gy) = (Slope(soft, (y * width) + x, 1, width), Slope(soft, (y * width) + x, width, 1));
                        (xx, xy, yy) = (xx + (gx * gx), xy + (gx * gy), yy + (gy * gy));
                    }
                }

                var apart = Math.Sqrt(((xx - yy) * (xx - yy)) + (4 * xy * xy));
                if (apart < LeastCoherence * (xx + yy) || xx + yy < 4 * LeastSlope * LeastSlope * Patch * Patch) continue;
                var turn = Elementary.Atan2(2 * xy, xx - yy) / 2;
                var (cx, cy) = (left + (Patch / 2.0), top + (Patch / 2.0));
                if (Period(grey, cx, cy, turn) is { } period) patches.Add((cx, cy, turn, period));
            }
        }

        return patches;
    }

    // Scharr's weights, 3, 10 and 3, keep the direction of a slope (thesis, Heidelberg 2000).
    private static double Slope(float[] values, int at, int along, int across) =>
        ((10 * (values[at + along] - values[at - along])) + (3 * (values[at + along + across] - values[at - along + across] + values[at + along - across] - values[at - along - across]))) / 16;

    /// <summary>What the brightness repeats with along a direction about a place, px; null where it does not.</summary>
    private static double? Period(GreyPicture grey, double x, double y, double turn)
    {
        var (dx, dy) = (Elementary.Cos(turn), Elementary.Sin(turn));
        const int count = (int)(2 * Along / Step);
        Span<double> row = stackalloc double[count];
        var mean = 0.0;
        for (var i = 0; i < count; i++)
        {
            var along = (i * Step) - Along;
            for (var aside = -2; aside <= 2; aside++) row[i] += grey.Between(x + (along * dx) - (aside * dy), y + (along * dy) + (aside * dx)) / 5.0;
            mean += row[i] / count;
        }

        var power = 0.0;
        for (var i = 0; i < count; i++) power += (row[i] -= mean) * row[i] / count;
        if (power < LeastSlope * LeastSlope) return null;
        const int most = (int)(MostPeriod / Step);
        Span<double> like = stackalloc double[most + 2];
        for (var lag = 1; lag < like.Length; lag++)
        {
            var sum = 0.0;
            for (var i = 0; i + lag < count; i++) sum += row[i] * row[i + lag];
            like[lag] = sum / (count - lag) / power;
        }

        // The first repeat, once the brightness has changed for good, that is nearly as good as any: twice it repeats as well.
        var start = 1;
        while (start < most && like[start] > 0.1) start++;
        var best = 0.0;
        for (var lag = start; lag <= most; lag++) best = Math.Max(best, like[lag]);
        for (var lag = Math.Max(start, (int)(LeastPeriod / Step)); lag <= most; lag++)
        {
            if (like[lag] > Math.Max(LeastLikeness, 0.7 * best) && like[lag] >= like[lag - 1] && like[lag] >= like[lag + 1]) return lag * Step;
        }

        return null;
    }

    /// <summary>The longest row of patches not yet used: along one patch's own direction, without a gap longer than a few patches.</summary>
    private static List<int>? Longest(List<(double X, double Y, double Turn, double Period)> patches, bool[] used)
    {
        List<int>? best = null;
        var most = 0.0;
        var stride = Math.Max(1, patches.Count / 250);
        for (var start = 0; start < patches.Count; start += stride)
        {
            if (used[start]) continue;
            foreach (var lean in Leans)
            {
                var (length, row) = Run(patches, used, start, patches[start].Turn + lean);
                if (length > most) (most, best) = (length, row);
            }
        }

        if (best is null) return null;
        // One patch's own direction is a degree or two off, and drifts out of a long row: that of all of them is followed again.
        for (var again = 0; again < 2; again++)
        {
            var (length, row) = Run(patches, used, best[best.Count / 2], Direction(patches, best));
            if (length >= most) (most, best) = (length, row);
        }

        return best;
    }

    /// <summary>The run of patches that goes through one of them in a direction, and how long it is, px: each leans and repeats as its neighbours do, while a slant may change both along the run.</summary>
    private static (double Length, List<int> Row) Run(List<(double X, double Y, double Turn, double Period)> patches, bool[] used, int start, double direction)
    {
        var (x, y, turn, period) = patches[start];
        var (dx, dy) = (Elementary.Cos(direction), Elementary.Sin(direction));
        var row = new List<(double At, int Index)>();
        for (var i = 0; i < patches.Count; i++)
        {
            var (px, py) = (patches[i].X - x, patches[i].Y - y);
            if (used[i] || (i != start && Math.Abs((px * -dy) + (py * dx)) >= Stride)) continue;
            if (Math.Abs(patches[i].Period - period) > (MostStretchInAll * period) + Step || Math.Abs(Half(patches[i].Turn - turn)) > MostTurnInAll) continue;
            row.Add(((px * dx) + (py * dy), i));
        }

        row.Sort();
        var own = row.FindIndex(each => each.Index == start);
        if (own < 0) return (0, []);
        List<int> run = [.. Followed(-1), start, .. Followed(1)];
        var (first, last) = (patches[run[0]], patches[run[^1]]);
        return (Math.Abs(((last.X - first.X) * dx) + ((last.Y - first.Y) * dy)), run);

        IEnumerable<int> Followed(int way)
        {
            var (at, nowTurn, nowPeriod) = (row[own].At, turn, period);
            var followed = new List<int>();
            for (var k = own + way; k >= 0 && k < row.Count && Math.Abs(row[k].At - at) < 4 * Patch; k += way)
            {
                var next = patches[row[k].Index];
                var leans = Half(next.Turn - nowTurn);
                if (Math.Abs(next.Period - nowPeriod) > (MostStretch * nowPeriod) + Step || Math.Abs(leans) > MostTurn) continue;
                (at, nowTurn, nowPeriod) = (row[k].At, nowTurn + (Follow * leans), nowPeriod + (Follow * (next.Period - nowPeriod)));
                followed.Add(row[k].Index);
            }

            if (way < 0) followed.Reverse();
            return followed;
        }
    }

    /// <summary>The direction in which patches lie: that of the longest axis of where they are, or what each of them leans to where they are few.</summary>
    private static double Direction(List<(double X, double Y, double Turn, double Period)> patches, List<int> row)
    {
        var (x, y) = (row.Average(index => patches[index].X), row.Average(index => patches[index].Y));
        var turn = Leaning(patches, row);
        if (row.Count < LeastOnAxis) return turn;
        var (xx, xy, yy) = (row.Sum(index => Square(patches[index].X - x)), row.Sum(index => (patches[index].X - x) * (patches[index].Y - y)), row.Sum(index => Square(patches[index].Y - y)));
        var axis = Elementary.Atan2(2 * xy, xx - yy) / 2;
        return turn + Half(axis - turn);
    }

    /// <summary>The direction square to the lines, by the mean of what the patches of a row lean to.</summary>
    private static double Leaning(List<(double X, double Y, double Turn, double Period)> patches, List<int> row)
    {
        var first = patches[row[0]].Turn;
        return first + row.Average(index => Half(patches[index].Turn - first));
    }

    /// <summary>The ruler along a row of patches: read along several lines beside one another, the one with the most lines that still tells longer ones.</summary>
    private static FoundRuler? Read(GreyPicture grey, List<(double X, double Y, double Turn, double Period)> row, double direction)
    {
        var (x, y) = (row.Average(each => each.X), row.Average(each => each.Y));
        var (dx, dy) = (Elementary.Cos(direction), Elementary.Sin(direction));
        var (low, high) = (row.Min(each => ((each.X - x) * dx) + ((each.Y - y) * dy)) - Patch, row.Max(each => ((each.X - x) * dx) + ((each.Y - y) * dy)) + Patch);
        var period = row.Select(each => each.Period).Order().ElementAt(row.Count / 2);
        if (high - low < LeastLines * period) return null;
        var least = (int)Math.Max(LeastLines, LeastSeen * (high - low - (2 * Patch)) / period);
        var rows = new List<(int Gaps, PicturePoint From, PicturePoint To)>();
        for (var aside = -2 * Patch; aside <= 2 * Patch; aside += Aside)
        {
            PicturePoint At(double along) => new((x + (along * dx) - (aside * dy)) * grey.PxPerPx, (y + (along * dy) + (aside * dx)) * grey.PxPerPx);
            var (from, to) = Within(low, high, along => At(along).X >= 0 && At(along).Y >= 0 && At(along).X <= grey.Width * grey.PxPerPx && At(along).Y <= grey.Height * grey.PxPerPx);
            if (to - from < LeastLines * LeastPeriod || RulerSearch.Find(grey, At(from), At(to), least, longer: false) is not { } found) continue;
            // Where every second line is longer, patches beyond the shortest repeat with twice what the lines lie apart.
            if (Times.Any(times => Math.Abs((found.PeriodPx / grey.PxPerPx * times) - period) <= 0.2 * period)) rows.Add((found.Gaps, At(from), At(to)));
        }

        // All lines are seen where the shortest are; which are longer costs more and is asked along a few such rows alone.
        var most = rows.Count == 0 ? 0 : rows.Max(each => each.Gaps);
        var full = rows.Where(each => each.Gaps >= LeastSeen * most).ToList();
        foreach (var at in Enumerable.Range(0, MostRead).Select(i => ((2 * i) + 1) * full.Count / (2 * MostRead)).Distinct().Where(at => at < full.Count))
        {
            if (RulerSearch.Find(grey, full[at].From, full[at].To, least) is { } found && Even(found, grey.PxPerPx) && IsRuled(found)) return found;
        }

        return null;
    }

    private static (double From, double To) Within(double low, double high, Func<double, bool> holds)
    {
        while (low < high && !holds(low)) low += 2;
        while (high > low && !holds(high)) high -= 2;
        return (low, high);
    }

    // Scatter of the lines about even steps: a row that slipped by a line or two scatters more than this.
    private static bool Even(FoundRuler found, double pxPerPx) => found.ScatterPx < Math.Max(MostScatter * found.PeriodPx, 0.3 * pxPerPx);

    // Fives, or an inch halved at least twice, each often enough; both at once are neither.
    private static bool IsRuled(FoundRuler found)
    {
        var metric = found.LongEvery.Any(every => every is 5 or 10 && found.Gaps + 1 >= (LeastLonger * every) - 2);
        var halved = found.LongEvery.Where(every => every is 4 or 8 or 16 or 32 or 64).ToList();
        return metric ? halved.Count == 0 : halved.Count >= 2 && !found.LongEvery.Contains(5) && found.Gaps + 1 >= LeastLonger * halved[0];
    }

    // Two readings of one ruler: along each other, and the same run of it.
    private static bool Same(FoundRuler a, FoundRuler b)
    {
        var (dx, dy) = ((a.Last.X - a.First.X) / a.First.DistanceTo(a.Last), (a.Last.Y - a.First.Y) / a.First.DistanceTo(a.Last));
        var (mx, my) = (((b.First.X + b.Last.X) / 2) - a.First.X, ((b.First.Y + b.Last.Y) / 2) - a.First.Y);
        var along = (mx * dx) + (my * dy);
        return Math.Abs((my * dx) - (mx * dy)) < 8 * a.PeriodPx && along > 0 && along < a.First.DistanceTo(a.Last);
    }

    private static double Square(double x) => x * x;

    // Directions of lines: half a turn is none.
    private static double Half(double turn) => turn - (Math.PI * Math.Round(turn / Math.PI));
}
