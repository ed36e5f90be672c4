namespace Lidoff.Telling.Documents;

/// <summary>What stands on a body, shown in the monospaced face; hostile text that may run right to left.</summary>
public sealed record MarkRun(string Text) : Inline;
