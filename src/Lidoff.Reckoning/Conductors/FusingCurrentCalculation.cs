namespace Lidoff.Reckoning.Conductors;

/// <summary>The steady current that melts a round copper wire in free air.</summary>
public sealed class FusingCurrentCalculation : Calculation<FusingCurrentCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "fusing_current",
        "The steady current that melts a round copper wire in free air.",
        Units.Ampere,
        [
            Given.Of("diameter", Units.Millimetre, 0.01, 10, "diameter of the copper"),
        ],
        "Preece 1888: 80 d^1.5, d in millimetres (10244 d^1.5 in inches)",
        Maturity.Experimental,
        [
            "The values it was compared with are from memory; look them up before leaning on it.",
            "A wire burns its neighbours long before it melts: never a fuse, never a rating. Try nothing that glows near " +
                "a cell.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T>
    {
        // Preece's constant is per millimetre to the power 1.5.
        T millimetres = x[0] * 1000;
        return 80 * millimetres * T.Sqrt(millimetres);
    }
}
