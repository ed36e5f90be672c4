namespace Lidoff.Seeing.Measuring.Edges;

/// <summary>A length whose ends were looked for. Both doubts together, as if independent, are that of the length: what both edges share is in each with √2.</summary>
public sealed record FittedLength(FittedEnd From, FittedEnd To)
{
    /// <summary>True where at least one end lies on an edge.</summary>
    public bool OnEdge => From.OnEdge || To.OnEdge;

    /// <summary>Standard uncertainty of each end, as one number, px.</summary>
    public double EachPx => Math.Sqrt(((From.UPx * From.UPx) + (To.UPx * To.UPx)) / 2);
}
