namespace Lidoff.Naming.Dates.Rules;

/// <summary>Two digits of year, two of week by ISO 8601: the commonest code on bodies (common practice, no source).</summary>
public sealed class YearWeekIso : IDateRule
{
    /// <inheritdoc/>
    public string Name => "YYWW iso";

    /// <inheritdoc/>
    public double Weight => 0.62;

    /// <inheritdoc/>
    public IEnumerable<WeekSpan> Read(string code, Action<string> refuse) =>
        code.Length == 4 && DateDigits.Number(code, 0, 2) is { } yy && DateDigits.Number(code, 2, 2) is { } ww && DateDigits.TwoDigitYear(yy) is { } year
            ? DateDigits.IsoWeeks([year], ww, Name, refuse)
            : [];
}
