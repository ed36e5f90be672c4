namespace Lidoff.Reckoning.Converters;

/// <summary>The efficiency of a linear regulator.</summary>
public sealed class RegulatorEfficiencyCalculation : Calculation<RegulatorEfficiencyCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "regulator_efficiency",
        "The efficiency of a linear regulator.",
        Units.Percent,
        [
            Given.Of("input_voltage", Units.Volt, 0.5, 100, "voltage before the regulator"),
            Given.Of("output_voltage", Units.Volt, 0.3, 100, "voltage after it"),
            Given.Of("load_current", Units.Milliampere, 1e-06, 100000.0, "current of the load", 1),
            Given.Of("quiescent_current", Units.Microampere, 0, 100000.0, "what the regulator itself takes", 0),
        ],
        "Power out over power in: the load current passes the whole regulator",
        Maturity.Checked,
        [
            "An output near the input drops out: then the output follows the input down.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        x[1] * x[2] / (x[0] * (x[2] + x[3]));
}
