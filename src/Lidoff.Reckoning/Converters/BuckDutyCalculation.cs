namespace Lidoff.Reckoning.Converters;

/// <summary>The share of the period in which a step-down converter's upper switch conducts.</summary>
public sealed class BuckDutyCalculation : Calculation<BuckDutyCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "buck_duty",
        "The share of the period in which a step-down converter's upper switch conducts.",
        Units.Percent,
        [
            Given.Of("input_voltage", Units.Volt, 0.5, 100, "voltage before the converter"),
            Given.Of("output_voltage", Units.Volt, 0.3, 100, "voltage after it"),
        ],
        "Volt-second balance of the inductor, continuous conduction, no losses",
        Maturity.Checked,
        [
            "In light load most converters skip pulses and this share loses its meaning.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        x[1] / x[0];
}
