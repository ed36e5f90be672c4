namespace Lidoff.Seeing.Measuring.Edges;

/// <summary>
/// A piece of a line along one of the board's two directions: its middle in half long sides, how far it is turned from its direction
/// (radians) and how well that is known, which direction, and how much it counts.
/// </summary>
internal readonly record struct LinePiece(double X, double Y, double Angle, bool Second, double U, double Count);
