namespace Lidoff.Telling.Documents;

/// <summary>One section: an anchor that is unique in the document (letters, digits, hyphens), a heading, its blocks.</summary>
public sealed record Section(string Anchor, string Heading, IReadOnlyList<Block> Blocks);
