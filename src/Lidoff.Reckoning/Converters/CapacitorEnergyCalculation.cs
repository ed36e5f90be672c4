namespace Lidoff.Reckoning.Converters;

/// <summary>The energy a charged capacitor can give at once.</summary>
public sealed class CapacitorEnergyCalculation : Calculation<CapacitorEnergyCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "capacitor_energy",
        "The energy a charged capacitor can give at once.",
        ReckonUnits.Millijoule,
        [
            Given.Of("capacitance", Units.Microfarad, 1e-09, 1000000.0, "capacitance"),
            Given.Of("voltage", Units.Volt, 0, 50000, "voltage across it"),
        ],
        "Half capacitance times voltage squared",
        Maturity.Checked,
        [
            "A charged capacitor can burn, startle or injure: discharge it through a resistor and check with a meter; " +
                "leave mains-side work to qualified persons.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        0.5 * x[0] * x[1] * x[1];
}
