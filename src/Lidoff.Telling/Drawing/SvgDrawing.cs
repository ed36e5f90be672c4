namespace Lidoff.Telling.Drawing;

/// <summary>A finished drawing: size in its own units and the elements inside, already safe to embed. Made by <see cref="SvgPen"/>.</summary>
public sealed record SvgDrawing(double Width, double Height, string Body);
