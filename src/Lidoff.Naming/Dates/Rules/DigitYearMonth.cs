namespace Lidoff.Naming.Dates.Rules;

/// <summary>One digit of year and a month character: 1 to 9, O, N, D.</summary>
public sealed class DigitYearMonth : IDateRule
{
    /// <inheritdoc/>
    public string Name => "Y and month character";

    /// <inheritdoc/>
    public double Weight => 0.3;

    /// <inheritdoc/>
    public IEnumerable<WeekSpan> Read(string code, Action<string> refuse) =>
        code.Length == 2 && DateDigits.Number(code, 0, 1) is { } y && Iec60062.Month(code[1]) is { } month
            ? DateDigits.Months(DateDigits.OneDigitYears(y), month, Name, refuse)
            : [];
}
