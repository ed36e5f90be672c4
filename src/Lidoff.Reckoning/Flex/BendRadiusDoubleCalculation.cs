namespace Lidoff.Reckoning.Flex;

/// <summary>The smallest inside radius a double-sided flexible circuit bears.</summary>
public sealed class BendRadiusDoubleCalculation : Calculation<BendRadiusDoubleCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "bend_radius_double",
        "The smallest inside radius a double-sided flexible circuit bears.",
        Units.Millimetre,
        [
            Given.Of("copper", Units.Micrometre, 1, 500, "thickness of the copper on each side"),
            Given.Of("core", Units.Micrometre, 1, 1000, "thickness of the film between"),
            Given.Of("cover", Units.Micrometre, 0, 1000, "thickness of the cover film"),
            Given.Of("strain", Units.Percent, 0.01, 50, "allowed strain: 16 one crease, 10 bent once to install, 0.3 moving in use"),
        ],
        "IPC-2223 bend formula as remembered",
        Maturity.Experimental,
        [
            "No published worked example was at hand: the formula is from memory.",
            "Rules of thumb disagree: 6 (single) to 12 times the thickness (double) when bent once, 10 to 150 times when " +
                "moving.",
            "Bend tests: take the cell out first.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        (x[1] / 2 + x[0]) * (1 - x[3]) / x[3] - x[2];
}
