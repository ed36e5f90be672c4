namespace Lidoff.Reckoning.Sensors;

/// <summary>
/// The head injury criterion of a half-sine pulse. Holds while the best window (67 % of the pulse) stays inside the
/// criterion's own limit.
/// </summary>
public sealed class HalfSineHicCalculation : Calculation<HalfSineHicCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "half_sine_hic",
        "The head injury criterion of a half-sine pulse.",
        Units.One,
        [
            Given.Of("peak", Units.StandardGravity, 0.1, 10000, "peak of the pulse"),
            Given.Of("duration", Units.Millisecond, 0.1, 22, "length of the pulse at its foot; longer ones meet the 15 ms window"),
        ],
        "Versace 1971 criterion, maximised in closed form for a half sine: 0.41464565 A^2.5 T, A in standard gravity, " +
            "T in seconds",
        Maturity.Checked,
        [
            "A consumer sensor's figure is no diagnosis; an indicator that stayed dark does not mean that nothing " +
                "happened. Tests on people need consent and ethics review.",
            "Regulations apply it to a dummy's head, not to a wrist or a helmet shell.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T>
    {
        T peak = x[0] / Nature.StandardGravity;
        return 0.41464565 * peak * peak * T.Sqrt(peak) * x[1];
    }
}
