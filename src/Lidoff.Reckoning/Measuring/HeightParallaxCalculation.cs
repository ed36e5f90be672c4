namespace Lidoff.Reckoning.Measuring;

/// <summary>How far a raised edge seems shifted in a picture taken straight from above.</summary>
public sealed class HeightParallaxCalculation : Calculation<HeightParallaxCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "height_parallax",
        "How far a raised edge seems shifted in a picture taken straight from above.",
        Units.Millimetre,
        [
            Given.Of("height", Units.Millimetre, 0, 100, "height above the plane of the scale"),
            Given.Of("off_axis", Units.Millimetre, 0, 1000, "distance from the middle of the picture"),
            Given.Of("camera_distance", Units.Millimetre, 10, 100000.0, "camera above the plane"),
        ],
        "Similar triangles: h r / (Z - h)",
        Maturity.Checked,
        []);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        x[0] * x[1] / (x[2] - x[0]);
}
