using Lidoff.Evidence.Entries;

namespace Lidoff.Telling.Drawing.Diagrams;

/// <summary>Boxes and lines in their places, and the size that holds them.</summary>
public sealed record PlacedDiagram(ValueList<PlacedBox> Boxes, ValueList<PlacedLink> Links, double Width, double Height);
