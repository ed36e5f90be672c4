namespace Lidoff.Reckoning.Converters;

/// <summary>The current a step-down converter takes from the battery for a load behind it.</summary>
public sealed class BatteryDrawCalculation : Calculation<BatteryDrawCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "battery_draw",
        "The current a step-down converter takes from the battery for a load behind it.",
        Units.Microampere,
        LightLoad.Inputs,
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
