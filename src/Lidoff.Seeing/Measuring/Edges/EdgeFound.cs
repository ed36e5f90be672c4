namespace Lidoff.Seeing.Measuring.Edges;

/// <summary>What was found along one track.</summary>
/// <param name="Line">The edge; null where there is none or several compete.</param>
/// <param name="UPx">Standard uncertainty of its middle across the track, px: its fit, and which of several edges is meant. 0 where there is none.</param>
/// <param name="Trouble">Why there is none, one sentence; empty where there is one.</param>
internal sealed record EdgeFound(EdgeLine? Line, double UPx, string Trouble);
