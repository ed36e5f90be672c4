namespace Lidoff.Reckoning.Sensors;

/// <summary>The Gadd severity index of a half-sine pulse.</summary>
public sealed class HalfSineSeverityCalculation : Calculation<HalfSineSeverityCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "half_sine_severity",
        "The Gadd severity index of a half-sine pulse.",
        Units.One,
        [
            Given.Of("peak", Units.StandardGravity, 0.1, 10000, "peak of the pulse"),
            Given.Of("duration", Units.Millisecond, 0.1, 200, "length of the pulse at its foot"),
        ],
        "Gadd 1966: integral of a^2.5, in closed form 0.457655858 A^2.5 T",
        Maturity.Checked,
        [
            "A consumer sensor's figure is no diagnosis; an indicator that stayed dark does not mean that nothing " +
                "happened. Tests on people need consent and ethics review.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T>
    {
        T peak = x[0] / Nature.StandardGravity;
        return 0.457655858 * peak * peak * T.Sqrt(peak) * x[1];
    }
}
