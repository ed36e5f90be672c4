namespace Lidoff.Reckoning.Sensors;

/// <summary>The change of speed in a half-sine pulse of acceleration.</summary>
public sealed class HalfSineSpeedCalculation : Calculation<HalfSineSpeedCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "half_sine_speed",
        "The change of speed in a half-sine pulse of acceleration.",
        Units.MetrePerSecond,
        [
            Given.Of("peak", Units.StandardGravity, 0.1, 10000, "peak of the pulse"),
            Given.Of("duration", Units.Millisecond, 0.1, 200, "length of the pulse at its foot"),
        ],
        "Integral of the half sine: 2 A T / pi",
        Maturity.Checked,
        [
            "A consumer sensor's figure is no diagnosis; an indicator that stayed dark does not mean that nothing " +
                "happened. Tests on people need consent and ethics review.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        2 / Math.PI * x[0] * x[1];
}
