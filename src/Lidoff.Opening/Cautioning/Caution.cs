namespace Lidoff.Opening.Cautioning;

/// <summary>One caution: a key that stays the same over versions, the acts it stands beside, and what it says.</summary>
public sealed record Caution(string Key, IReadOnlyList<StepAct> Acts, string Say);
