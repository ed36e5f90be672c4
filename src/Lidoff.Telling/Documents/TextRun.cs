namespace Lidoff.Telling.Documents;

/// <summary>Plain text, hostile: a writer escapes it.</summary>
public sealed record TextRun(string Text) : Inline;
