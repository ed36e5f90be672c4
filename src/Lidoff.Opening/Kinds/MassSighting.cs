namespace Lidoff.Opening.Kinds;

/// <summary>A mass on the scale. The step at which it was weighed, where that was said, is its entry's target.</summary>
/// <param name="Spot">What was weighed; empty for the whole specimen.</param>
/// <param name="G">Mass, g.</param>
/// <param name="UG">Standard uncertainty, g.</param>
public sealed record MassSighting(string Spot, double G, double UG);
