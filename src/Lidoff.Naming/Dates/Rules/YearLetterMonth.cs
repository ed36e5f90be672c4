namespace Lidoff.Naming.Dates.Rules;

/// <summary>Two digits of year and a month letter, A for January to L for December.</summary>
public sealed class YearLetterMonth : IDateRule
{
    /// <inheritdoc/>
    public string Name => "YY and month letter";

    /// <inheritdoc/>
    public double Weight => 0.4;

    /// <inheritdoc/>
    public IEnumerable<WeekSpan> Read(string code, Action<string> refuse) =>
        code.Length == 3 && DateDigits.Number(code, 0, 2) is { } yy && code[2] is >= 'A' and <= 'L' && DateDigits.TwoDigitYear(yy) is { } year
            ? DateDigits.Months([year], code[2] - 'A' + 1, Name, refuse)
            : [];
}
