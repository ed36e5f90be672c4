namespace Lidoff.Telling.Drawing.Plans;

/// <summary>A finished plan: the drawing, words for whoever cannot see it, and where everything lies. Both texts come from a dossier: hostile until escaped.</summary>
public sealed record DrawnPlan(SvgDrawing Drawing, string Alternative, PlacedPlan Placed);
