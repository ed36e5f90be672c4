namespace Lidoff.Reckoning.Touch;

/// <summary>The thinnest cover that keeps a static discharge out.</summary>
public sealed class OverlayLeastCalculation : Calculation<OverlayLeastCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "overlay_least",
        "The thinnest cover that keeps a static discharge out.",
        Units.Millimetre,
        [
            Given.Of("voltage", ReckonUnits.Kilovolt, 0.1, 50, "voltage to be kept out"),
            Given.Of("strength", ReckonUnits.VoltPerMillimetre, 500, 1000000.0, "breakdown strength of the cover"),
        ],
        "Voltage over breakdown strength",
        Maturity.Checked,
        [
            "A gap at the edge of the cover breaks down first. Discharge tests: cell out, guard in place.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        x[0] / x[1];
}
