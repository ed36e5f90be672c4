namespace Lidoff.Naming.Dates.Rules;

/// <summary>Week first, then year: some makers, and many labels (common practice, no source).</summary>
public sealed class WeekYear : IDateRule
{
    /// <inheritdoc/>
    public string Name => "WWYY";

    /// <inheritdoc/>
    public double Weight => 0.12;

    /// <inheritdoc/>
    public IEnumerable<WeekSpan> Read(string code, Action<string> refuse) =>
        code.Length == 4 && DateDigits.Number(code, 0, 2) is { } ww && DateDigits.Number(code, 2, 2) is { } yy && DateDigits.TwoDigitYear(yy) is { } year
            ? DateDigits.IsoWeeks([year], ww, Name, refuse)
            : [];
}
