namespace Lidoff.Seeing.Measuring.Edges;

/// <summary>What was found along one track.</summary>
/// <param name="Line">The edge; null where there is none or several compete.</param>
/// <param name="OpenPx">Standard uncertainty from which edge it is, px.</param>
/// <param name="Trouble">Why there is none, one sentence; empty where there is one.</param>
internal sealed record EdgeFound(EdgeLine? Line, double OpenPx, string Trouble);
