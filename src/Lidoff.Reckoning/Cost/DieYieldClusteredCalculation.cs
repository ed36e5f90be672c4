namespace Lidoff.Reckoning.Cost;

/// <summary>The share of dies that work where defects come in clusters.</summary>
public sealed class DieYieldClusteredCalculation : Calculation<DieYieldClusteredCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "die_yield_clustered",
        "The share of dies that work where defects come in clusters.",
        Units.Percent,
        [
            Given.Of("area", Units.SquareMillimetre, 0.01, 2000, "area of a die"),
            Given.Of("defects", ReckonUnits.PerSquareCentimetre, 0, 10, "defects per area"),
            Given.Of("clustering", Units.One, 0.1, 100, "cluster parameter: 1 strong, 3 usual, 100 nearly none"),
        ],
        "Negative binomial yield: (1 + D A / a)^-a",
        Maturity.Checked,
        [
            "An estimate, never to be shown as the maker's accounts.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        T.Pow(1 + x[0] * x[1] / x[2], -x[2]);
}
