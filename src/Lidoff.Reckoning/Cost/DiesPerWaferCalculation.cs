namespace Lidoff.Reckoning.Cost;

/// <summary>How many dies a round wafer holds.</summary>
public sealed class DiesPerWaferCalculation : Calculation<DiesPerWaferCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "dies_per_wafer",
        "How many dies a round wafer holds.",
        Units.One,
        [
            Given.Of("wafer", Units.Millimetre, 25, 450, "diameter of the wafer"),
            Given.Of("area", Units.SquareMillimetre, 0.01, 2000, "area of a die"),
        ],
        "Hennessy and Patterson, Computer Architecture: pi r^2 / A - pi d / sqrt(2 A)",
        Maturity.Experimental,
        ["The values it was compared with are from memory; look them up before leaning on it."]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        Math.PI / 4 * x[0] * x[0] / x[1] - Math.PI * x[0] / T.Sqrt(2 * x[1]);
}
