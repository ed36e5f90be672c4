using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Measuring.Edges;

/// <summary>An end of a length after its edge was looked for.</summary>
/// <param name="Point">Where it lies: on the edge, or as clicked.</param>
/// <param name="UPx">Standard uncertainty along the length, px; that of the click, and of what its edge is wider than a sharp one, where it stayed.</param>
/// <param name="ShiftPx">How far it was moved outwards, px; 0 where it stayed.</param>
/// <param name="Trouble">Why it stayed, one sentence; empty where it was moved.</param>
public sealed record FittedEnd(PicturePoint Point, double UPx, double ShiftPx, string Trouble)
{
    /// <summary>True where an edge was found.</summary>
    public bool OnEdge => Trouble.Length == 0;
}
