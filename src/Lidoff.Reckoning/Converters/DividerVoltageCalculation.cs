namespace Lidoff.Reckoning.Converters;

/// <summary>
/// The voltage at the middle of a resistor divider. With the feedback voltage families 0.5, 0.6, 0.8, 1.0, 1.2 and 1.25 V
/// it tells an unmarked converter's output.
/// </summary>
public sealed class DividerVoltageCalculation : Calculation<DividerVoltageCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "divider_voltage",
        "The voltage at the middle of a resistor divider.",
        Units.Volt,
        [
            Given.Of("voltage", Units.Volt, 0, 1000, "voltage across the divider"),
            Given.Of("upper", Units.Ohm, 0, 1000000000.0, "upper resistor"),
            Given.Of("lower", Units.Ohm, 0.1, 1000000000.0, "lower resistor"),
        ],
        "Ohm's law, unloaded divider",
        Maturity.Checked,
        [
            "In circuit everything beside the lower resistor pulls the true value down.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        x[0] * x[2] / (x[1] + x[2]);
}
