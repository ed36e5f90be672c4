namespace Lidoff.Telling.Documents;

/// <summary>Blocks under an anchor of their own inside a section, with a small heading: one "because" of a figure or a name.</summary>
public sealed record Anchored(string Anchor, string Heading, IReadOnlyList<Block> Blocks) : Block;
