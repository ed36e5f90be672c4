namespace Lidoff.Opening.Resuming;

/// <summary>One thing that must be recorded before a planned step, and whether it is.</summary>
public sealed record RecordedFirst(string What, bool Done);
