namespace Lidoff.Naming.Dates.Rules;

/// <summary>One digit of year and a month letter, A for January to L for December.</summary>
public sealed class DigitYearLetterMonth : IDateRule
{
    /// <inheritdoc/>
    public string Name => "Y and month letter";

    /// <inheritdoc/>
    public double Weight => 0.3;

    /// <inheritdoc/>
    public IEnumerable<WeekSpan> Read(string code, Action<string> refuse) =>
        code.Length == 2 && DateDigits.Number(code, 0, 1) is { } y && code[1] is >= 'A' and <= 'L'
            ? DateDigits.Months(DateDigits.OneDigitYears(y), code[1] - 'A' + 1, Name, refuse)
            : [];
}
