using Lidoff.Evidence.Entries;

namespace Lidoff.Bench.Rooms.Trace;

/// <summary>A drawing of the room: its size, its elements, already escaped by the pen that drew them, and words for whoever cannot see it.</summary>
/// <param name="Name">"supply" or "blocks"; also its name in addresses.</param>
/// <param name="Title">Its heading.</param>
/// <param name="Width">In the drawing's own units.</param>
/// <param name="Height">In the drawing's own units.</param>
/// <param name="Body">SVG elements.</param>
/// <param name="Alternative">What it shows, in words; hostile text.</param>
/// <param name="Remarks">What does not fit, in sentences; hostile text.</param>
public sealed record DiagramRow(string Name, string Title, double Width, double Height, string Body, string Alternative, ValueList<string> Remarks);
