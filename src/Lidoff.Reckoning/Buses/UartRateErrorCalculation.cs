namespace Lidoff.Reckoning.Buses;

/// <summary>How far a UART's divided clock lies off the wanted rate.</summary>
public sealed class UartRateErrorCalculation : Calculation<UartRateErrorCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "uart_rate_error",
        "How far a UART's divided clock lies off the wanted rate.",
        Units.Percent,
        [
            Given.Of("clock", Units.Megahertz, 0.001, 1000, "clock of the UART"),
            Given.Of("samples", Units.One, 4, 16, "samples a bit: 16 normal, 8 double speed", 16),
            Given.Of("divider", Units.One, 1, 1000000.0, "whole number by which the clock is divided"),
            Given.Of("rate", Units.Hertz, 1, 100000000.0, "wanted bits per second"),
        ],
        "Clock over samples and divider, against the wanted rate",
        Maturity.Experimental,
        ["The values it was compared with are from memory; look them up before leaning on it."]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        x[0] / (x[1] * x[2] * x[3]) - 1;
}
