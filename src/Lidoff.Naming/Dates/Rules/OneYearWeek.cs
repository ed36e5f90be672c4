namespace Lidoff.Naming.Dates.Rules;

/// <summary>One digit of year, two of week: the decade stays open.</summary>
public sealed class OneYearWeek : IDateRule
{
    /// <inheritdoc/>
    public string Name => "YWW";

    /// <inheritdoc/>
    public double Weight => 0.6;

    /// <inheritdoc/>
    public IEnumerable<WeekSpan> Read(string code, Action<string> refuse) =>
        code.Length == 3 && DateDigits.Number(code, 0, 1) is { } y && DateDigits.Number(code, 1, 2) is { } ww
            ? DateDigits.IsoWeeks(DateDigits.OneDigitYears(y), ww, Name, refuse)
            : [];
}
