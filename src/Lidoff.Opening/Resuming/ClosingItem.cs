namespace Lidoff.Opening.Resuming;

/// <summary>One thing to see to before the bench is left: a key that stays the same over versions, and the sentence.</summary>
public sealed record ClosingItem(string Key, string Say);
