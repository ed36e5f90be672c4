using System.Globalization;
using Lidoff.Numbers.Quantities;

namespace Lidoff.Numbers.Typed.Codes;

/// <summary>One way to read a code on a passive part: value in SI, unit, the tolerances its letter may mean, and the rule it was read by.</summary>
public sealed record CodeReading(double Si, Unit Unit, string Rule, IReadOnlyList<Tolerance> Tolerances)
{
    /// <summary>Rated voltage where the code tells it, volt; null where it does not.</summary>
    public double? RatedVolts { get; init; }

    /// <summary>Temperature coefficient where the code tells it, plus or minus so many parts per million a kelvin; null where it does not.</summary>
    public double? DriftPpm { get; init; }

    /// <summary>What sort of part carries such a value.</summary>
    public PassiveSort Sort => Unit == Units.Farad ? PassiveSort.Capacitor : Unit == Units.Henry ? PassiveSort.Inductor : Unit == Units.Ampere ? PassiveSort.Fuse : PassiveSort.Resistor;

    /// <inheritdoc/>
    public override string ToString()
    {
        // What comes after the value stands in the order in which people say it.
        var tolerance = Tolerances.Count == 1 ? " " + Tolerances[0] : "";
        var volts = RatedVolts is { } v ? string.Create(CultureInfo.InvariantCulture, $", {v:0.##} V") : "";
        var drift = DriftPpm is { } ppm ? string.Create(CultureInfo.InvariantCulture, $", {ppm:0.##} ppm/K") : "";
        return $"{QuantityText.Value(Si, Unit, 6)}{tolerance}{volts}{drift} ({Rule})";
    }
}
