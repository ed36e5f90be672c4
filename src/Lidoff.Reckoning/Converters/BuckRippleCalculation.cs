namespace Lidoff.Reckoning.Converters;

/// <summary>
/// The peak-to-peak ripple current in a step-down converter's inductor. Read backwards it gives the inductor of an
/// unmarked converter from a ripple seen on the oscilloscope.
/// </summary>
public sealed class BuckRippleCalculation : Calculation<BuckRippleCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "buck_ripple",
        "The peak-to-peak ripple current in a step-down converter's inductor.",
        Units.Ampere,
        [
            Given.Of("input_voltage", Units.Volt, 0.5, 100, "voltage before the converter"),
            Given.Of("output_voltage", Units.Volt, 0.3, 100, "voltage after it"),
            Given.Of("inductance", Units.Microhenry, 0.01, 100000.0, "inductance at that current"),
            Given.Of("frequency", Units.Megahertz, 0.001, 100, "switching frequency"),
        ],
        "Converter efficiency application note of a power-chip maker: (Vi - Vo) / (f L) x Vo / Vi",
        Maturity.Checked,
        []);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        (x[0] - x[1]) * x[1] / (x[0] * x[2] * x[3]);
}
