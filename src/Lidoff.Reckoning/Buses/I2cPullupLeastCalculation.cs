namespace Lidoff.Reckoning.Buses;

/// <summary>The smallest pull-up resistor that an I2C device can still pull low.</summary>
public sealed class I2cPullupLeastCalculation : Calculation<I2cPullupLeastCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "i2c_pullup_least",
        "The smallest pull-up resistor that an I2C device can still pull low.",
        Units.Ohm,
        [
            Given.Of("supply", Units.Volt, 0.8, 6, "supply of the bus"),
            Given.Of("sink_current", Units.Milliampere, 0.1, 50, "what a device must sink: 3 mA Standard and Fast, 20 mA Fast-mode Plus", 3),
        ],
        "I2C-bus specification UM10204, section 7.1: (VDD - VOL) / IOL, with VOL 0.4 V above 2 V and 0.2 VDD below",
        Maturity.Checked,
        []);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T>
    {
        // Both rules meet at 2 V, so the value has no step there.
        T low = T.IfLess(2.0, x[0], 0.4, 0.2 * x[0]);
        return (x[0] - low) / x[1];
    }
}
