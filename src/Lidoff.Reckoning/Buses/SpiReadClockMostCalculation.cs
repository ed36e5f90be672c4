namespace Lidoff.Reckoning.Buses;

/// <summary>
/// The fastest SPI clock at which a read still arrives in time. The reply leaves on one edge and is taken half a period
/// later; the wire counts twice.
/// </summary>
public sealed class SpiReadClockMostCalculation : Calculation<SpiReadClockMostCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "spi_read_clock_most",
        "The fastest SPI clock at which a read still arrives in time.",
        Units.Megahertz,
        [
            Given.Of("output_delay", Units.Nanosecond, 0.1, 10000.0, "clock to output of the device"),
            Given.Of("setup", Units.Nanosecond, 0, 10000.0, "setup time of the host"),
            Given.Of("length", Units.Millimetre, 0, 100000.0, "length of the wire"),
            Given.Of("delay", ReckonUnits.PicosecondPerMillimetre, 3.3, 20, "delay of the wire", 6),
        ],
        "Half a period holds output delay, the way there and back, and setup",
        Maturity.Checked,
        []);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        1 / (2 * (x[0] + 2 * x[2] * x[3] + x[1]));
}
