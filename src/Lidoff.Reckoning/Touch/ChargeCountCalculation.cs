namespace Lidoff.Reckoning.Touch;

/// <summary>The count a resistor-capacitor touch measurement gives.</summary>
public sealed class ChargeCountCalculation : Calculation<ChargeCountCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "charge_count",
        "The count a resistor-capacitor touch measurement gives.",
        Units.One,
        [
            Given.Of("frequency", Units.Megahertz, 0.001, 1000, "clock of the counter"),
            Given.Of("resistance", Units.Ohm, 1, 1000000000.0, "charging resistor"),
            Given.Of("capacitance", Units.Picofarad, 0.1, 1000000.0, "pad with finger"),
            Given.Of("threshold", Units.Percent, 1, 99, "switching threshold as share of the supply", 50),
        ],
        "Charging curve: f R C ln(1 / (1 - threshold))",
        Maturity.Checked,
        []);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        x[0] * x[1] * x[2] * T.Log(1 / (1 - x[3]));
}
