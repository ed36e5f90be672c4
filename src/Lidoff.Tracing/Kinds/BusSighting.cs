namespace Lidoff.Tracing.Kinds;

/// <summary>A part that answered on a bus.</summary>
/// <param name="Type">Sort of bus.</param>
/// <param name="Address">7-bit address; null where the bus has none or it is not known.</param>
/// <param name="Spot">The spot that answered; empty when it is not known which.</param>
/// <param name="Acks">How often it answered; null when not counted.</param>
/// <param name="Nacks">How often it did not; null when not counted.</param>
public sealed record BusSighting(BusType Type, int? Address, string Spot, long? Acks, long? Nacks);
