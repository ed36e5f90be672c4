namespace Lidoff.Reckoning.Converters;

/// <summary>The efficiency of a small step-down converter down to microamperes.</summary>
public sealed class LightLoadEfficiencyCalculation : Calculation<LightLoadEfficiencyCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "light_load_efficiency",
        "The efficiency of a small step-down converter down to microamperes.",
        Units.Percent,
        [
            Given.Of("battery_voltage", Units.Volt, 0.5, 100, "voltage before the converter"),
            Given.Of("load_voltage", Units.Volt, 0.3, 100, "voltage after it"),
            Given.Of("load_current", Units.Microampere, 0.001, 10000000.0, "current of the load"),
            Given.Of("quiescent_current", Units.Nanoampere, 0, 1000000.0, "what the converter takes while it idles", 500),
            Given.Of("resistance", Units.Ohm, 0, 100, "switches and winding, as one", 0.3),
            Given.Of("switching_loss", Units.Percent, 0, 50, "share of the power given that switching costs", 6),
        ],
        "Loss model of a pulse-skipping converter: idle current, one resistance, and a share of the power given",
        Maturity.Checked,
        [
            "Three numbers stand for a whole converter; take the curve of its data sheet where there is one.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T>
    {
        T given = x[1] * x[2];
        return given / LightLoad.PowerTaken(x);
    }
}
