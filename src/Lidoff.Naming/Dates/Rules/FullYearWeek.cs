namespace Lidoff.Naming.Dates.Rules;

/// <summary>Four digits of year, two of week: labels and panels.</summary>
public sealed class FullYearWeek : IDateRule
{
    /// <inheritdoc/>
    public string Name => "YYYYWW";

    /// <inheritdoc/>
    public double Weight => 0.8;

    /// <inheritdoc/>
    public IEnumerable<WeekSpan> Read(string code, Action<string> refuse) =>
        code.Length == 6 && DateDigits.Number(code, 0, 4) is { } year and >= DateDigits.FirstYear and <= DateDigits.LastYear && DateDigits.Number(code, 4, 2) is { } ww
            ? DateDigits.IsoWeeks([year], ww, Name, refuse)
            : [];
}
