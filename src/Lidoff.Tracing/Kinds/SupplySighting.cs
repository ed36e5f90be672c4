namespace Lidoff.Tracing.Kinds;

/// <summary>The supply of a part, measured at its pin.</summary>
/// <param name="Spot">The part.</param>
/// <param name="Pin">The pin; empty when not said.</param>
/// <param name="V">Voltage, V.</param>
/// <param name="UV">Its standard uncertainty, V.</param>
public sealed record SupplySighting(string Spot, string Pin, double V, double UV);
