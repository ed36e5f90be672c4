namespace Lidoff.Tracing.Kinds;

/// <summary>One probe of two points. Which of the readings are there tells what sort of touch it was; at least one is.</summary>
/// <param name="A">One point.</param>
/// <param name="B">The other; for volts the one the black lead was on.</param>
/// <param name="Beep">Whether the meter beeped; null when it was not listened to.</param>
/// <param name="ThresholdOhm">Below how many ohms it beeps; null when not known (meters differ: 10 to 75 Ω).</param>
/// <param name="Ohms">Resistance read, Ω; null when none was read.</param>
/// <param name="UOhm">Its standard uncertainty, Ω; null when not stated.</param>
/// <param name="Volts">Voltage of A against B, V; null when none was read.</param>
/// <param name="UV">Its standard uncertainty, V; null when not stated.</param>
/// <param name="Open">True when the meter showed an open circuit.</param>
public sealed record TouchSighting(
    TouchPoint A, TouchPoint B, bool? Beep, double? ThresholdOhm, double? Ohms, double? UOhm, double? Volts, double? UV, bool Open);
