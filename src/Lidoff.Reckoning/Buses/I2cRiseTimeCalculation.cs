namespace Lidoff.Reckoning.Buses;

/// <summary>The time an I2C line takes from 30 to 70 % of its supply.</summary>
public sealed class I2cRiseTimeCalculation : Calculation<I2cRiseTimeCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "i2c_rise_time",
        "The time an I2C line takes from 30 to 70 % of its supply.",
        Units.Nanosecond,
        [
            Given.Of("pullup", Units.Ohm, 1, 1000000.0, "all pull-ups of the line in parallel"),
            Given.Of("capacitance", Units.Picofarad, 1, 100000.0, "capacitance of the line with all pins"),
        ],
        "I2C-bus specification UM10204, section 7.1: 0.8473 R C, where 0.8473 is ln(7/3)",
        Maturity.Checked,
        [
            "Series resistors and switches on the way are not in it.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        BusRise.ThirtyToSeventy * x[0] * x[1];
}
