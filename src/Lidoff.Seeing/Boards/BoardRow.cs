namespace Lidoff.Seeing.Boards;

/// <summary>
/// One equation of the fit in units of its own standard uncertainty: what is left of it, and how the prediction moves with the free numbers
/// <paramref name="Index"/> (each at most once).
/// </summary>
internal sealed record BoardRow(int[] Index, double[] Slope, double Rest);
