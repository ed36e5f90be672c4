namespace Lidoff.Telling.Documents;

/// <summary>A plain list.</summary>
public sealed record Listing(IReadOnlyList<IReadOnlyList<Inline>> Items) : Block;
