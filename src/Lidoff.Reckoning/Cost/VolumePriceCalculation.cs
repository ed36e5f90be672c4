namespace Lidoff.Reckoning.Cost;

/// <summary>The price of a part at another quantity, or the cost of a later unit.</summary>
public sealed class VolumePriceCalculation : Calculation<VolumePriceCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "volume_price",
        "The price of a part at another quantity, or the cost of a later unit.",
        Units.One,
        [
            Given.Of("price", Units.One, 1e-06, 1000000000.0, "price at the known quantity, any currency"),
            Given.Of("quantity", Units.One, 1, 1000000000000.0, "quantity asked for"),
            Given.Of("known_quantity", Units.One, 1, 1000000000000.0, "quantity of the known price", 1),
            Given.Of("step", Units.Percent, 50, 100, "what remains at each doubling: 93 parts, 80 assembly work", 93),
        ],
        "Power law of quantity (learning curve): price x (quantity / known)^log2(step)",
        Maturity.Checked,
        [
            "An estimate, never to be shown as the maker's accounts.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        x[0] * T.Pow(x[1] / x[2], T.Log(x[3]) / Nature.LogOfTwo);
}
