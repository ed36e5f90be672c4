namespace Lidoff.Reckoning.Cost;

/// <summary>The share of dies on a wafer that work.</summary>
public sealed class DieYieldCalculation : Calculation<DieYieldCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "die_yield",
        "The share of dies on a wafer that work.",
        Units.Percent,
        [
            Given.Of("area", Units.SquareMillimetre, 0.01, 2000, "area of a die"),
            Given.Of("defects", ReckonUnits.PerSquareCentimetre, 0, 10, "defects per area"),
            Given.Of("complexity", Units.One, 1, 40, "process complexity: 12 for 28 nm, 13.5 for 40 nm"),
        ],
        "Bose-Einstein yield as in Hennessy and Patterson: (1 + D A)^-N",
        Maturity.Experimental,
        [
            "The values it was compared with are from memory; look them up before leaning on it.",
            "An estimate, never to be shown as the maker's accounts.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        T.Pow(1 + x[0] * x[1], -x[2]);
}
