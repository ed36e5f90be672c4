namespace Lidoff.Reckoning.Sensors;

/// <summary>The noise that rounding to whole steps adds to a digital motion sensor.</summary>
public sealed class QuantisationNoiseCalculation : Calculation<QuantisationNoiseCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "quantisation_noise",
        "The noise that rounding to whole steps adds to a digital motion sensor.",
        ReckonUnits.MilliGravity,
        [
            Given.Of("full_scale", Units.StandardGravity, 0.1, 10000, "range to each side"),
            Given.Of("bits", Units.One, 4, 32, "bits of a reading"),
        ],
        "Step over the square root of twelve (rectangular rounding error)",
        Maturity.Checked,
        []);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        2 * x[0] / T.Pow(2, x[1]) / Math.Sqrt(12);
}
