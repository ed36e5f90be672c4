namespace Lidoff.Bench.Rooms.See.Viewing;

/// <summary>A known or wanted length drawn over a picture.</summary>
/// <param name="Id">Its handle: "scale:" or "length:" and the entry.</param>
/// <param name="X1">One end, px of the picture.</param>
/// <param name="Y1">One end.</param>
/// <param name="X2">The other end.</param>
/// <param name="Y2">The other end.</param>
/// <param name="Sort">"scale", "length", "box", or "read" for a line of text.</param>
/// <param name="Words">What stands beside it, fit to be shown.</param>
/// <param name="On">Whether what it belongs to is selected.</param>
public sealed record StageLine(string Id, double X1, double Y1, double X2, double Y2, string Sort, string Words, bool On);
