namespace Lidoff.Opening.Kinds;

/// <summary>A mass on the scale.</summary>
/// <param name="Spot">What was weighed; empty for the whole specimen.</param>
/// <param name="G">Mass, g.</param>
/// <param name="UG">Standard uncertainty, g.</param>
public sealed record MassSighting(string Spot, double G, double UG);
