namespace Lidoff.Reckoning.Buses;

/// <summary>The slowest sender, against its nominal rate, that a UART receiver still follows.</summary>
public sealed class UartSlowestCalculation : Calculation<UartSlowestCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "uart_slowest",
        "The slowest sender, against its nominal rate, that a UART receiver still follows.",
        Units.Percent,
        [
            Given.Of("data_bits", Units.One, 5, 10, "data and parity bits of a frame"),
            Given.Of("samples", Units.One, 8, 16, "samples a bit: 16 normal, 8 double speed", 16),
        ],
        "UART error-tolerance page of a microcontroller maker: receiver that votes on the three middle samples",
        Maturity.Checked,
        [
            "Both ends share this tolerance; common advice is to use half of it at each.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T>
    {
        // The first of the voting samples: 8 of 16, 4 of 8.
        T first = x[1] / 2;
        return (x[0] + 1) * x[1] / (x[1] - 1 + x[0] * x[1] + first);
    }
}
