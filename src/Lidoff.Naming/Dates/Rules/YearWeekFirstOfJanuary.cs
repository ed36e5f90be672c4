namespace Lidoff.Naming.Dates.Rules;

/// <summary>
/// Two digits of year, two of week, where the week that holds 1 January is week 01 and the days before it belong to the old year's last
/// week: one large maker's package-marking page counts so, and it is not ISO 8601 (2010-01-01 is ISO 0953 but 1001 here).
/// </summary>
public sealed class YearWeekFirstOfJanuary : IDateRule
{
    /// <inheritdoc/>
    public string Name => "YYWW, 1 January in week 01";

    /// <inheritdoc/>
    public double Weight => 0.1;

    /// <inheritdoc/>
    public IEnumerable<WeekSpan> Read(string code, Action<string> refuse)
    {
        if (code.Length != 4 || DateDigits.Number(code, 0, 2) is not { } yy || DateDigits.Number(code, 2, 2) is not { } week) return [];
        if (week is 0 or > 53 || DateDigits.TwoDigitYear(yy) is not { } year) return [];
        var newYear = new DateOnly(year, 1, 1);
        var start = IsoWeek.Of(newYear).Monday.AddDays(7 * (week - 1));
        if (start.Year > year) return [];
        var first = start < newYear ? newYear : start;
        var last = start.AddDays(6).Year > year ? new DateOnly(year, 12, 31) : start.AddDays(6);
        return [WeekSpan.OfDays(first, last)];
    }
}
