namespace Lidoff.Seeing.Measuring.Edges;

/// <summary>A side of a body after its edge was looked for.</summary>
/// <param name="OffsetPx">How far outside of the clicked side it lies in its middle, px; 0 where it stayed.</param>
/// <param name="UPx">Standard uncertainty of that, px: spread along the side, which edge it is, tone curve; of the clicks where it stayed.</param>
/// <param name="Support">Share of the side that shows the edge, 0 to 1.</param>
/// <param name="BlurPx">Blur of the edge, px; 0 where it stayed.</param>
/// <param name="Trouble">Why it stayed, one sentence; empty where it was found.</param>
public sealed record FittedSide(double OffsetPx, double UPx, double Support, double BlurPx, string Trouble)
{
    /// <summary>True where an edge was found.</summary>
    public bool OnEdge => Trouble.Length == 0;
}
