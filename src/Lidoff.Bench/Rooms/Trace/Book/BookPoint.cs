namespace Lidoff.Bench.Rooms.Trace.Book;

/// <summary>A spot or pad in the drawing.</summary>
/// <param name="Name">Its name as touches write it; hostile text.</param>
/// <param name="Says">What a pin-out calls it, or its role; may be empty.</param>
/// <param name="Pad">True for a pad, false for a spot.</param>
/// <param name="X">Units from the left.</param>
/// <param name="Y">Units from the top.</param>
/// <param name="Other">True when it lies on the right page.</param>
public sealed record BookPoint(string Name, string Says, bool Pad, double X, double Y, bool Other = false);
