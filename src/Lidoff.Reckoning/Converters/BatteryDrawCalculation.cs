namespace Lidoff.Reckoning.Converters;

/// <summary>The current a step-down converter takes from the battery for a load behind it.</summary>
public sealed class BatteryDrawCalculation : Calculation<BatteryDrawCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "battery_draw",
        "The current a step-down converter takes from the battery for a load behind it.",
        Units.Microampere,
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
        where T : struct, IReal<T> =>
        LightLoad.PowerTaken(x) / x[0];
}
