using Lidoff.Numbers.Failing;

namespace Lidoff.Naming.Dates;

/// <summary>Every sentence about date codes that a person may see.</summary>
public static class DateSentences
{
    /// <summary>A window that is not two dates.</summary>
    public static Fault NotASpan(string text) => new("between", "two dates such as 2019-01..2022-06",
        $"'{text}' is not a span of time; write two months, weeks, days or years with two dots between, such as 2019-01..2022-06.");

    /// <summary>A window that ends before it starts.</summary>
    public static Fault SpanBackwards(string text) => new("between", "the earlier date first", $"'{text}' ends before it starts.");

    /// <summary>Week 00 or 54 and above.</summary>
    public static string NoSuchWeek(string digits, string rule) => $"There is no week {digits}, so it is not {rule}.";

    /// <summary>Week 53 in a year of 52.</summary>
    public static string NoWeek53(int year, string rule) => $"{year} has 52 weeks, so week 53 is not {rule}.";

    /// <summary>A month that does not exist.</summary>
    public static string NoSuchMonth(string digits, string rule) => $"There is no month {digits}, so it is not {rule}.";

    /// <summary>Nothing could be read.</summary>
    public static Fault NotADate(string code, IEnumerable<string> why)
    {
        var reasons = string.Join(' ', why);
        return new(code, "a date code such as 2146, 4621, 146 or M5",
            $"'{code}' has no reading as a date." + (reasons.Length == 0 ? "" : " " + reasons));
    }

    /// <summary>Readings exist, but none inside the window asked for.</summary>
    public static Fault NotInWindow(string code, WeekSpan between) => new(code, $"a date from {between.From} to {between.To}",
        $"'{code}' has no reading from {between.From} to {between.To}.");

    /// <summary>The shape of a well-known part number.</summary>
    public static string LikeAPartNumber(string code) =>
        $"'{code}' has the shape of a logic or controller part number; read it as a date only where the part number stands elsewhere on the body.";

    /// <summary>Codes that share no window.</summary>
    public static string NoSharedWindow(IReadOnlyList<string> codes) =>
        $"{string.Join(" and ", codes)} cannot have been put on one board: no readings of them lie within three years of each other.";

    /// <summary>A code without a reading in the window asked for.</summary>
    public static string OutsideWindow(IReadOnlyList<string> codes, WeekSpan between) =>
        $"{string.Join(" and ", codes)} {(codes.Count == 1 ? "has" : "have")} no reading from {between.From} to {between.To}.";
}
