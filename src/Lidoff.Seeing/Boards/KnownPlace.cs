namespace Lidoff.Seeing.Boards;

/// <summary>A landmark whose place on the board is known: mm to the right and downwards seen from the top, with the standard uncertainty of each.</summary>
public sealed record KnownPlace(string Name, double X, double Y, double U);
