using Lidoff.Evidence.Entries;

namespace Lidoff.Opening.Kinds;

/// <summary>The cell as found: what it says, what it measures, whether it is safe to go on.</summary>
/// <param name="Spot">Its designator; empty when not said.</param>
/// <param name="Volts">Voltage at its wires, V. Zero may be a protection board that has latched off.</param>
/// <param name="UV">Standard uncertainty of the voltage, V.</param>
/// <param name="Ohms">Inner resistance, Ω.</param>
/// <param name="Printed">What is printed on it, as it stands; empty when nothing was read.</param>
/// <param name="Mm">Length, width and thickness without tabs, mm, largest first as given; empty when not measured.</param>
/// <param name="UMm">Standard uncertainty of each, mm.</param>
/// <param name="Wires">Number of wires; a third is most often a thermistor.</param>
/// <param name="Connected">Whether it is connected to the board now.</param>
/// <param name="Damaged">Swollen, dented, wet or hot; null when not looked at.</param>
public sealed record CellSighting(
    string Spot, double? Volts, double UV, double? Ohms, string Printed, ValueList<double> Mm, double UMm, int? Wires, bool? Connected, bool? Damaged);
