using Lidoff.Evidence.Entries;

namespace Lidoff.Bench.Rooms.Trace;

/// <summary>A drawing of the room: its size, its elements, already escaped by the pen that drew them, and words for whoever cannot see it.</summary>
/// <param name="Name">"supply" or "blocks"; also its name in addresses.</param>
/// <param name="Title">Its heading.</param>
/// <param name="Width">In the drawing's own units.</param>
/// <param name="Height">In the drawing's own units.</param>
/// <param name="Body">SVG elements.</param>
/// <param name="Steps">The same boxes and lines from top to bottom, each box behind those it hangs on.</param>
/// <param name="Alternative">What it shows, in words; hostile text.</param>
/// <param name="Remarks">What does not fit, in sentences; hostile text.</param>
public sealed record DiagramRow(string Name, string Title, double Width, double Height, string Body, ValueList<DiagramStep> Steps, string Alternative, ValueList<string> Remarks)
{
    // The smallest words, those on lines, are 11 units high; at 0.87 of that they are 9.5 px, which can still be read.
    private const double Least = 0.87;

    /// <summary>The class that says from which width on the drawing can be read, in steps of 50 px from 300 to 1700, which stands for all that are wider.</summary>
    public string FromWidth => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"from-{Math.Clamp(Math.Ceiling(Width * Least / 50) * 50, 300, 1700):0}");
}
