namespace Lidoff.Reckoning.Buses;

/// <summary>The greatest line capacitance for which any I2C pull-up works. Where the smallest allowed resistor meets the largest.</summary>
public sealed class I2cBusCapacitanceMostCalculation : Calculation<I2cBusCapacitanceMostCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "i2c_bus_capacitance_most",
        "The greatest line capacitance for which any I2C pull-up works.",
        Units.Picofarad,
        [
            Given.Of("supply", Units.Volt, 0.8, 6, "supply of the bus"),
            Given.Of("rise_time", Units.Nanosecond, 1, 100000.0, "longest allowed: 1000 Standard, 300 Fast, 120 Fast-mode Plus"),
            Given.Of("sink_current", Units.Milliampere, 0.1, 50, "what a device must sink: 3 mA Standard and Fast, 20 mA Fast-mode Plus", 3),
        ],
        "I2C-bus specification UM10204, section 7.1: rise time over 0.8473 times the least pull-up",
        Maturity.Checked,
        [
            "The specification caps it besides: 400 pF, or 550 pF in Fast-mode Plus.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T>
    {
        T low = T.IfLess(2.0, x[0], 0.4, 0.2 * x[0]);
        return x[1] * x[2] / (BusRise.ThirtyToSeventy * (x[0] - low));
    }
}
