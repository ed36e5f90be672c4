namespace Lidoff.Reckoning.Converters;

/// <summary>How much longer a cell lasts behind a step-down converter than behind a linear regulator.</summary>
public sealed class BuckGainCalculation : Calculation<BuckGainCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "buck_gain",
        "How much longer a cell lasts behind a step-down converter than behind a linear regulator.",
        Units.Percent,
        [
            Given.Of("efficiency", Units.Percent, 10, 100, "mean efficiency of the converter"),
            Given.Of("cell_voltage", Units.Volt, 1, 100, "mean voltage of the cell over its charge"),
            Given.Of("load_voltage", Units.Volt, 0.3, 100, "voltage of the load"),
        ],
        "Energy over charge: efficiency x mean cell voltage / load voltage - 1",
        Maturity.Checked,
        [
            "Holds for the load's share alone: asleep, the converter's idle current decides.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        x[0] * x[1] / x[2] - 1;
}
