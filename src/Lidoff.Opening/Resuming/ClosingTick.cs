namespace Lidoff.Opening.Resuming;

/// <summary>One item of the closing list, whether it is seen to, and by what, in words; empty while it is not.</summary>
public sealed record ClosingTick(ClosingItem Item, bool Done, string Because);
