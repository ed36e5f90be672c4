namespace Lidoff.Naming.Dates.Rules;

/// <summary>Two digits each of year, month and day: labels, cells, panels.</summary>
public sealed class YearMonthDay : IDateRule
{
    /// <inheritdoc/>
    public string Name => "YYMMDD";

    /// <inheritdoc/>
    public double Weight => 0.5;

    /// <inheritdoc/>
    public IEnumerable<WeekSpan> Read(string code, Action<string> refuse)
    {
        if (code.Length != 6 || DateDigits.Number(code, 0, 2) is not { } yy || DateDigits.Number(code, 2, 2) is not { } mm || DateDigits.Number(code, 4, 2) is not { } dd) return [];
        if (DateDigits.TwoDigitYear(yy) is not { } year || mm is < 1 or > 12 || dd < 1 || dd > DateTime.DaysInMonth(year, mm)) return [];
        var day = new DateOnly(year, mm, dd);
        return [WeekSpan.OfDays(day, day)];
    }
}
