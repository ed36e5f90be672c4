namespace Lidoff.Naming.Dates.Rules;

/// <summary>Two digits of year, two of month: boards and labels rather than chips.</summary>
public sealed class YearMonth : IDateRule
{
    /// <inheritdoc/>
    public string Name => "YYMM";

    /// <inheritdoc/>
    public double Weight => 0.02;

    /// <inheritdoc/>
    public IEnumerable<WeekSpan> Read(string code, Action<string> refuse) =>
        code.Length == 4 && DateDigits.Number(code, 0, 2) is { } yy && DateDigits.Number(code, 2, 2) is { } mm and >= 1 and <= 12 && DateDigits.TwoDigitYear(yy) is { } year
            ? DateDigits.Months([year], mm, Name, refuse)
            : [];
}
