namespace Lidoff.Reckoning.Buses;

/// <summary>The largest pull-up resistor with which an I2C line still rises in time.</summary>
public sealed class I2cPullupMostCalculation : Calculation<I2cPullupMostCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "i2c_pullup_most",
        "The largest pull-up resistor with which an I2C line still rises in time.",
        Units.Ohm,
        [
            Given.Of("rise_time", Units.Nanosecond, 1, 100000.0, "longest allowed: 1000 Standard, 300 Fast, 120 Fast-mode Plus"),
            Given.Of("capacitance", Units.Picofarad, 1, 100000.0, "capacitance of the line with all pins"),
        ],
        "I2C-bus specification UM10204, section 7.1: tr / (0.8473 Cb), where 0.8473 is ln(7/3)",
        Maturity.Checked,
        []);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        x[0] / (BusRise.ThirtyToSeventy * x[1]);
}
