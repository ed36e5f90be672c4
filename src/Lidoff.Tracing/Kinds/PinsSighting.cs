using Lidoff.Evidence.Entries;

namespace Lidoff.Tracing.Kinds;

/// <summary>Pins counted on a body, and which of them are ground.</summary>
/// <param name="Spot">What was counted.</param>
/// <param name="Count">Pins, balls or pads, without a thermal pad; null when not counted.</param>
/// <param name="Ground">Pins that were found on ground, as the drawing numbers them.</param>
public sealed record PinsSighting(string Spot, int? Count, ValueList<string> Ground);
