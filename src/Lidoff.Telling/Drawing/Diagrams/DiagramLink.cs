namespace Lidoff.Telling.Drawing.Diagrams;

/// <summary>A line to be drawn between two boxes. Lines of one box under one <paramref name="Label"/> leave it together; an arrow points at <paramref name="To"/>.</summary>
public sealed record DiagramLink(string From, string To, string Label, string Style, bool Arrow);
