using Lidoff.Evidence.Entries;

namespace Lidoff.Telling.Drawing.Diagrams;

/// <summary>
/// A line in its place: its words as they are drawn, the first above it and a second below; corners from the left box to the right one,
/// straight or at right angles; <paramref name="Reversed"/> when it runs against its link.
/// </summary>
public sealed record PlacedLink(DiagramLink Link, ValueList<string> Label, ValueList<(double X, double Y)> Corners, bool Reversed);
