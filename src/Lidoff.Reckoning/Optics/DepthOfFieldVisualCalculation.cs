namespace Lidoff.Reckoning.Optics;

/// <summary>How deep a view through a microscope is sharp to the eye.</summary>
public sealed class DepthOfFieldVisualCalculation : Calculation<DepthOfFieldVisualCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "depth_of_field_visual",
        "How deep a view through a microscope is sharp to the eye.",
        Units.Micrometre,
        [
            Given.Of("aperture", Units.One, 0.01, 1.4, "numerical aperture of the objective"),
            Given.Of("magnification", Units.One, 1, 3000, "total magnification with the eyepiece"),
            Given.Of("wavelength", Units.Micrometre, 0.2, 2, "wavelength of the light", 0.55),
        ],
        "Berek as given by a microscope maker: wavelength / (2 NA^2) + 340 µm / (M NA), in air",
        Maturity.Checked,
        [
            "Another optics page misses the magnification in the second term.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        x[2] / (2 * x[0] * x[0]) + 340e-6 / (x[1] * x[0]);
}
