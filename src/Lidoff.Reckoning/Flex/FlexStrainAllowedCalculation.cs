namespace Lidoff.Reckoning.Flex;

/// <summary>The range of strain copper foil bears for a number of bends.</summary>
public sealed class FlexStrainAllowedCalculation : Calculation<FlexStrainAllowedCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "flex_strain_allowed",
        "The range of strain copper foil bears for a number of bends.",
        Units.Percent,
        [
            Given.Of("cycles", Units.One, 1, 100000000.0, "bends until it breaks"),
            Given.Of("ductility", Units.Percent, 5, 200, "fracture ductility: electrodeposited 15-30 %, rolled annealed 65 % and more", 30),
            Given.Of("strength_over_modulus", Units.Percent, 0.05, 1, "tensile strength over modulus of the foil", 0.3333),
        ],
        "Engelmaier ductility-exhaustion equation (IPC-TM-650 2.4.2.1), as remembered",
        Maturity.Experimental,
        [
            "No published worked example was at hand: the formula is from memory.",
            "Bend tests: take the cell out first.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T>
    {
        T logCycles = T.Log(x[0]) / Nature.LogOfTen;
        T plastic = T.Pow(x[0], -0.6) * T.Pow(x[1], 0.75);
        T foil = T.Exp(x[1]) / 0.36;
        return plastic + 0.9 * x[2] * T.Pow(foil, 0.1785 * (5 - logCycles));
    }
}
