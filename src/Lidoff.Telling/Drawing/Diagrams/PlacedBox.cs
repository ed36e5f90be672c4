using Lidoff.Evidence.Entries;

namespace Lidoff.Telling.Drawing.Diagrams;

/// <summary>A box in its place: its words as they are drawn, line by line, top left corner and size, in the drawing's units.</summary>
public sealed record PlacedBox(DiagramBox Box, ValueList<string> Lines, double X, double Y, double Width, double Height);
