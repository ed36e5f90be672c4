using Lidoff.Numbers.Failing;

namespace Lidoff.Naming.Dates;

/// <summary>
/// Reads date codes by every known grammar at once and weighs the readings against each other: by how common the grammar is, by how
/// likely the year is, and by what else the code could be. Nothing here looks at today's date, so the same codes give the same answer
/// on every day.
/// </summary>
public static class DateCodes
{
    /// <summary>
    /// How much a code keeps when its digits are those of a common part-number series: 74xx logic made in 1974 and the 8049 controller
    /// are known traps (collectors' lists; trade fact).
    /// </summary>
    private const double PartNumberShape = 0.15;

    /// <summary>Weight of "no date": a lot number, a plant code, a grammar nobody wrote down. A judgement, no source.</summary>
    private const double NoDate = 0.1;

    /// <summary>The rules, found by type, in ordinal order of their names.</summary>
    public static IReadOnlyList<IDateRule> Rules { get; } = typeof(IDateRule).Assembly.GetTypes()
        .Where(t => t is { IsAbstract: false, IsPublic: true } && typeof(IDateRule).IsAssignableFrom(t))
        .Select(t => (IDateRule)Activator.CreateInstance(t)!)
        .OrderBy(r => r.Name, StringComparer.Ordinal)
        .ToArray();

    /// <summary>Reads the codes of one board. <paramref name="between"/> bounds every reading; null leaves it open.</summary>
    public static DatesResult Read(IReadOnlyList<string> codes, WeekSpan? between)
    {
        var read = Guard.NotNull(codes).Select(code => ReadOne(code, between)).ToArray();
        return DateWindow.Share(read, between);
    }

    /// <summary>Every reading of one code, likeliest first.</summary>
    public static DateCode ReadOne(string code, WeekSpan? between)
    {
        var remarks = new List<string>();
        var found = new Dictionary<WeekSpan, (string Rule, double Weight, double Best)>();
        var spellings = DateSpelling.Of(Guard.NotNull(code));
        foreach (var rule in Rules)
        {
            foreach (var (text, share) in spellings)
            {
                var spans = rule.Read(text, say => { if (spellings.Count == 1) remarks.Add(say); }).ToArray();
                var total = spans.Sum(s => EraWeight(s.From.Year));
                foreach (var span in spans) Add(found, span, rule.Name, rule.Weight * share * EraWeight(span.From.Year) / Math.Max(total, 1));
            }
        }
        var said = remarks.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).ToList();
        if (found.Count == 0) return new DateCode(code, [], said, DateSentences.NotADate(code, said));

        var inside = found.Where(f => between is not { } b || b.Touches(f.Key)).ToArray();
        if (inside.Length == 0) return new DateCode(code, [], said, DateSentences.NotInWindow(code, between!.Value));
        var scale = 1.0;
        if (spellings.Count == 1 && LooksLikeAPart(spellings[0].Text))
        {
            said.Add(DateSentences.LikeAPartNumber(code));
            scale = PartNumberShape;
        }
        return new DateCode(code, Weigh(inside, scale), said, null);
    }

    /// <summary>
    /// How likely a worn device's part is of a year, up to a factor: flat over the years of wearables, thinner before and after.
    /// A judgement, no source.
    /// </summary>
    internal static double EraWeight(int year) => year switch
    {
        >= 2008 and <= 2028 => 1,
        >= 2000 and <= 2032 => 0.5,
        >= 1990 and < 2000 => 0.15,
        _ => 0.04,
    };

    private static void Add(Dictionary<WeekSpan, (string Rule, double Weight, double Best)> found, WeekSpan span, string rule, double weight)
    {
        var had = found.GetValueOrDefault(span, (Rule: rule, Weight: 0.0, Best: 0.0));
        found[span] = (weight > had.Best ? rule : had.Rule, had.Weight + weight, Math.Max(weight, had.Best));
    }

    private static DateReading[] Weigh(KeyValuePair<WeekSpan, (string Rule, double Weight, double Best)>[] readings, double scale)
    {
        var ordered = readings.OrderBy(r => r.Key.From).ThenBy(r => r.Key.To).ToArray();
        var total = ordered.Sum(r => r.Value.Weight) + NoDate;
        return [.. ordered.Select(r => new DateReading(r.Key, r.Value.Rule, Math.Round(r.Value.Weight / total * scale, 4)))
            .OrderByDescending(r => r.P).ThenBy(r => r.Weeks.From).ThenBy(r => r.Rule, StringComparer.Ordinal)];
    }

    private static bool LooksLikeAPart(string text) =>
        text.Length == 4 && text.All(char.IsAsciiDigit)
        && (text.StartsWith("74", StringComparison.Ordinal) || text.StartsWith("78", StringComparison.Ordinal) || text.StartsWith("79", StringComparison.Ordinal)
            || text.StartsWith("803", StringComparison.Ordinal) || text.StartsWith("804", StringComparison.Ordinal) || text.StartsWith("805", StringComparison.Ordinal));
}
