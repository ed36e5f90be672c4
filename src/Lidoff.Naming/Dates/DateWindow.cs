namespace Lidoff.Naming.Dates;

/// <summary>
/// The weeks that several codes of one board share. Codes of one board cluster within weeks, and a part may lie in stock for two or
/// three years (collectors' lists; trade facts), so readings further apart than that cannot be of one build.
/// </summary>
internal static class DateWindow
{
    /// <summary>Widest spread of codes on one board, weeks: three years.</summary>
    private const int WidestStock = 156;

    /// <summary>Weight of a gap of w weeks between two codes is 1 / (1 + (w / Cluster)^2): a quarter of a year, with a heavy tail for stock.</summary>
    private const double Cluster = 13;

    internal static DatesResult Share(IReadOnlyList<DateCode> codes, WeekSpan? between)
    {
        if (between is { } bounds)
        {
            var outside = codes.Where(c => c.Fault == DateSentences.NotInWindow(c.Code, bounds)).Select(c => c.Code).ToArray();
            if (outside.Length > 0) return new DatesResult(codes, null, new DateQuarrel(outside, DateSentences.OutsideWindow(outside, bounds)));
        }
        var readable = codes.Where(c => c.Readings.Count > 0).ToArray();
        if (readable.Length == 0) return new DatesResult(codes, null, null);
        var fighting = Fighting(readable);
        if (fighting.Count > 0) return new DatesResult(codes, null, new DateQuarrel(fighting, DateSentences.NoSharedWindow(fighting)));
        var spans = Joint(readable);
        if (spans.Count > 0) return new DatesResult(codes, Shortest(spans), null);
        var all = readable.Select(c => c.Code).ToArray();
        return new DatesResult(codes, null, new DateQuarrel(all, DateSentences.NoSharedWindow(all)));
    }

    private static List<string> Fighting(DateCode[] codes)
    {
        // Sets of two are the smallest that can fight; every code in such a pair is named once, in the order given.
        var guilty = new bool[codes.Length];
        for (var i = 0; i < codes.Length; i++)
        {
            for (var j = i + 1; j < codes.Length; j++)
            {
                if (codes[i].Readings.Any(a => codes[j].Readings.Any(b => a.Weeks.Gap(b.Weeks) <= WidestStock))) continue;
                guilty[i] = guilty[j] = true;
            }
        }
        return [.. codes.Where((_, i) => guilty[i]).Select(c => c.Code)];
    }

    /// <summary>Weights of (first week, last week) over all choices of readings, built code by code so that many codes stay cheap.</summary>
    private static SortedDictionary<(int From, int To), double> Joint(DateCode[] codes)
    {
        var spans = new SortedDictionary<(int From, int To), double>();
        // In ordinal order, so that the order in which codes were typed changes no bit.
        var ordered = codes.OrderBy(c => c.Code, StringComparer.Ordinal).ToArray();
        foreach (var reading in ordered[0].Readings) Add(spans, reading.Weeks.From.Ordinal, reading.Weeks.To.Ordinal, reading.P);
        foreach (var code in ordered.Skip(1))
        {
            var next = new SortedDictionary<(int From, int To), double>();
            foreach (var ((from, to), weight) in spans)
            {
                foreach (var reading in code.Readings)
                {
                    var (a, b) = (reading.Weeks.From.Ordinal, reading.Weeks.To.Ordinal);
                    var gap = Math.Max(0, Math.Max(a - to, from - b));
                    var (first, last) = (Math.Min(from, a), Math.Max(to, b));
                    if (gap > WidestStock || last - first > WidestStock + 52) continue;
                    Add(next, first, last, weight * reading.P / (1 + (gap / Cluster * (gap / Cluster))));
                }
            }
            spans = next;
        }
        return spans;
    }

    private static void Add(SortedDictionary<(int From, int To), double> spans, int from, int to, double weight) =>
        spans[(from, to)] = spans.GetValueOrDefault((from, to)) + weight;

    private static WeekSpan Shortest(SortedDictionary<(int From, int To), double> spans)
    {
        var total = spans.Values.Sum();
        var byEnd = spans.OrderBy(s => s.Key.To).ThenBy(s => s.Key.From).ToArray();
        (int From, int To)? best = null;
        foreach (var from in spans.Keys.Select(k => k.From).Distinct())
        {
            var held = 0.0;
            foreach (var ((first, to), weight) in byEnd)
            {
                if (first < from) continue;
                held += weight;
                if (held < 0.9 * total) continue;
                if (best is not { } b || to - from < b.To - b.From) best = (from, to);
                break;
            }
        }
        return new WeekSpan(IsoWeek.FromOrdinal(best!.Value.From), IsoWeek.FromOrdinal(best.Value.To));
    }
}
