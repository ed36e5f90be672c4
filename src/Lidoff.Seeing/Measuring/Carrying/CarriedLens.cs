namespace Lidoff.Seeing.Measuring.Carrying;

/// <summary>A lens's radial term that is known from another picture of the same camera and zoom.</summary>
/// <param name="Bend">The term: a place at r half long sides from the middle belongs at r·(1 + bend·r²).</param>
/// <param name="U">Its standard uncertainty, with what zooming and focusing again add; above zero.</param>
public sealed record CarriedLens(double Bend, double U);
