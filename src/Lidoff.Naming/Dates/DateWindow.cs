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

    /// <summary>A code whose readings are less likely than this, all together, may well be no date and cannot start a quarrel.</summary>
    private const double Arguable = 0.3;

    /// <summary>
    /// Weight of "no date" beside readings that fit in: the area under the cluster's curve, 13 π weeks, against some 1500 weeks in which a
    /// date could lie.
    /// </summary>
    private const double Coincidence = 0.027;

    private static readonly (int From, int To) Nothing = (int.MaxValue, int.MinValue);

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
                if (!Argues(codes[i]) || !Argues(codes[j]) || codes[i].Readings.Any(a => codes[j].Readings.Any(b => a.Weeks.Gap(b.Weeks) <= WidestStock))) continue;
                guilty[i] = guilty[j] = true;
            }
        }
        return [.. codes.Where((_, i) => guilty[i]).Select(c => c.Code)];
    }

    private static bool Argues(DateCode code) => code.Readings.Sum(r => r.P) >= Arguable;

    /// <summary>Weights of (first week, last week) over all choices of readings, built code by code so that many codes stay cheap.</summary>
    private static SortedDictionary<(int From, int To), double> Joint(DateCode[] codes)
    {
        var spans = new SortedDictionary<(int From, int To), double> { [Nothing] = 1 };

        // In ordinal order, so that the order in which codes were typed changes no bit.
        foreach (var code in codes.OrderBy(c => c.Code, StringComparer.Ordinal))
        {
            var next = new SortedDictionary<(int From, int To), double>();
            var noDate = Coincidence * Math.Max(0, 1 - code.Readings.Sum(r => r.P));
            foreach (var (span, weight) in spans)
            {
                next[span] = next.GetValueOrDefault(span) + (weight * noDate);
                foreach (var reading in code.Readings) Join(next, span, weight, reading);
            }
            spans = next;
        }
        spans.Remove(Nothing);
        return spans;
    }

    private static void Join(SortedDictionary<(int From, int To), double> next, (int From, int To) span, double weight, DateReading reading)
    {
        var (a, b) = (reading.Weeks.From.Ordinal, reading.Weeks.To.Ordinal);
        if (span == Nothing)
        {
            Add(next, a, b, weight * reading.P);
            return;
        }
        double gap = Math.Max(0, Math.Max(a - span.To, span.From - b));
        var (first, last) = (Math.Min(span.From, a), Math.Max(span.To, b));
        if (gap <= WidestStock && last - first <= WidestStock + 52) Add(next, first, last, weight * reading.P / (1 + (gap / Cluster * (gap / Cluster))));
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
