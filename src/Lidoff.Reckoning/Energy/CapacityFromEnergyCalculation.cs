namespace Lidoff.Reckoning.Energy;

/// <summary>The charge behind an energy printed on a cell.</summary>
public sealed class CapacityFromEnergyCalculation : Calculation<CapacityFromEnergyCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "capacity_from_energy",
        "The charge behind an energy printed on a cell.",
        Units.MilliampereHour,
        [
            Given.Of("energy", Units.WattHour, 0.0001, 100000.0, "energy as printed"),
            Given.Of("voltage", Units.Volt, 0.5, 1000, "nominal voltage, 3.7 V for most pouches"),
        ],
        "Energy over nominal voltage",
        Maturity.Checked,
        []);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        x[0] / x[1];
}
