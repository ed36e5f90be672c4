namespace Lidoff.Telling.Documents;

/// <summary>Text that leads to an anchor of this document, or to a file of the report's own folder (a relative name). Never elsewhere.</summary>
public sealed record LinkRun(string Text, string Target, LinkKind Kind) : Inline;
