namespace Lidoff.Naming.Dates;

/// <summary>
/// All codes of one board in the order given, and the window they share: the shortest run of weeks that holds all of them with
/// 90 % probability. Null when they share none; then <paramref name="Quarrel"/> names the codes that fight.
/// </summary>
public sealed record DatesResult(IReadOnlyList<DateCode> Codes, WeekSpan? Window90, DateQuarrel? Quarrel);
