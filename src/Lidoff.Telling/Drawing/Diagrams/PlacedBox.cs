namespace Lidoff.Telling.Drawing.Diagrams;

/// <summary>A box in its place: top left corner and size, in the drawing's units.</summary>
public sealed record PlacedBox(DiagramBox Box, double X, double Y, double Width, double Height);
