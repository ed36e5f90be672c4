namespace Lidoff.Reckoning.Sensors;

/// <summary>The smallest step a digital motion sensor can report.</summary>
public sealed class SensorStepCalculation : Calculation<SensorStepCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "sensor_step",
        "The smallest step a digital motion sensor can report.",
        ReckonUnits.MilliGravity,
        [
            Given.Of("full_scale", Units.StandardGravity, 0.1, 10000, "range to each side, 16 for a range of plus and minus 16"),
            Given.Of("bits", Units.One, 4, 32, "bits of a reading"),
        ],
        "Twice the full scale over two to the power of the bits",
        Maturity.Checked,
        [
            "The range is a setting: see it on the bus, do not take it from the data sheet's first page.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        2 * x[0] / T.Pow(2, x[1]);
}
