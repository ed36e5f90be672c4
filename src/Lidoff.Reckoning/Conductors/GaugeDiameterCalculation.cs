namespace Lidoff.Reckoning.Conductors;

/// <summary>The bare diameter of a wire of an American gauge number.</summary>
public sealed class GaugeDiameterCalculation : Calculation<GaugeDiameterCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "gauge_diameter",
        "The bare diameter of a wire of an American gauge number.",
        Units.Millimetre,
        [
            Given.Of("gauge", Units.One, -3, 50, "gauge number; 00 is -1, 000 is -2"),
        ],
        "ASTM B258: 0.127 mm x 92^((36 - n) / 39)",
        Maturity.Experimental,
        ["The values it was compared with are from memory; look them up before leaning on it."]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        0.127e-3 * T.Pow(92, (36 - x[0]) / 39);
}
