namespace Lidoff.Reckoning.Flex;

/// <summary>The strain at the outside of a bent flexible circuit.</summary>
public sealed class BendStrainCalculation : Calculation<BendStrainCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "bend_strain",
        "The strain at the outside of a bent flexible circuit.",
        Units.Percent,
        [
            Given.Of("thickness", Units.Micrometre, 1, 5000, "total thickness with cover film"),
            Given.Of("radius", Units.Millimetre, 0.01, 1000, "radius at the inside of the bend"),
        ],
        "Pure bending about the middle: t / (2 R + t)",
        Maturity.Checked,
        [
            "Copper off the middle, glue and a local kink change it; a wrist is not the tightest radius of its strap.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        x[0] / (2 * x[1] + x[0]);
}
