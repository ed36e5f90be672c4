namespace Lidoff.Naming.Dates.Rules;

/// <summary>One digit of year, two of week, one character that counts the lot: 2303 as lot 3 of week 30, which reads like week 03 of 2023 (a maker's forum; common practice).</summary>
public sealed class OneYearWeekLot : IDateRule
{
    /// <inheritdoc/>
    public string Name => "YWW and a lot character";

    /// <inheritdoc/>
    public double Weight => 0.07;

    /// <inheritdoc/>
    public IEnumerable<WeekSpan> Read(string code, Action<string> refuse) =>
        code.Length == 4 && DateDigits.Number(code, 0, 1) is { } y && DateDigits.Number(code, 1, 2) is { } ww
            ? DateDigits.IsoWeeks(DateDigits.OneDigitYears(y), ww, Name, static _ => { })
            : [];
}
