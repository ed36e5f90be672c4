namespace Lidoff.Telling.Drawing.Diagrams;

/// <summary>A finished diagram: the drawing, words for whoever cannot see it, and where everything lies. Both texts come from a dossier: hostile until escaped.</summary>
public sealed record DrawnDiagram(SvgDrawing Drawing, string Alternative, PlacedDiagram Placed);
