namespace Lidoff.Reckoning.Optics;

/// <summary>How deep a microscope picture is sharp, by diffraction. Stacks step by 70 to 80 % of it.</summary>
public sealed class DepthOfFieldCalculation : Calculation<DepthOfFieldCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "depth_of_field",
        "How deep a microscope picture is sharp, by diffraction.",
        Units.Micrometre,
        [
            Given.Of("aperture", Units.One, 0.01, 1.4, "numerical aperture of the objective"),
            Given.Of("wavelength", Units.Micrometre, 0.2, 2, "wavelength of the light", 0.55),
        ],
        "Wave-optical depth: wavelength over the aperture squared",
        Maturity.Checked,
        []);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        x[1] / (x[0] * x[0]);
}
