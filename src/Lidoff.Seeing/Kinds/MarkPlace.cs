using Lidoff.Evidence.Entries;

namespace Lidoff.Seeing.Kinds;

/// <summary>One place of a mark's line: alternatives in the order given; what they lack to one is left for every other character.</summary>
public sealed record MarkPlace(ValueList<MarkGlyph> Top);
