using Lidoff.Telling.Drawing;

namespace Lidoff.Telling.Documents;

/// <summary>A drawing, perhaps over a picture of the report's own folder, with a caption and words for whoever cannot see it.</summary>
public sealed record Figure(string Anchor, SvgDrawing Drawing, string Alternative, IReadOnlyList<Inline> Caption) : Block;
