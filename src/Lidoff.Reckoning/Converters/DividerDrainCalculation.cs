namespace Lidoff.Reckoning.Converters;

/// <summary>The steady current through a resistor divider. Battery sense dividers are the drain that is forgotten most.</summary>
public sealed class DividerDrainCalculation : Calculation<DividerDrainCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "divider_drain",
        "The steady current through a resistor divider.",
        Units.Microampere,
        [
            Given.Of("voltage", Units.Volt, 0, 1000, "voltage across the divider"),
            Given.Of("upper", Units.Ohm, 0.1, 1000000000.0, "upper resistor"),
            Given.Of("lower", Units.Ohm, 0.1, 1000000000.0, "lower resistor"),
        ],
        "Ohm's law",
        Maturity.Checked,
        []);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        x[0] / (x[1] + x[2]);
}
