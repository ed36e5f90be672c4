namespace Lidoff.Naming.Ranking;

/// <summary>
/// What to look at next: the words for it, how many bits it is expected to tell, about how many minutes it takes, and what it risks
/// (<c>none</c>, <c>may damage</c>, <c>destroys</c>).
/// </summary>
public sealed record NextMeasure(string Measure, double Bits, double Minutes, string Risk);
