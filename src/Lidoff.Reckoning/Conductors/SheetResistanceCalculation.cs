namespace Lidoff.Reckoning.Conductors;

/// <summary>The resistance of a square of copper foil.</summary>
public sealed class SheetResistanceCalculation : Calculation<SheetResistanceCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "sheet_resistance",
        "The resistance of a square of copper foil.",
        Units.Milliohm,
        [
            Given.Of("thickness", Units.Micrometre, 0.1, 1000, "thickness of the copper"),
            Given.Of("temperature", Units.DegreeCelsius, -60, 200, "its temperature", 20),
        ],
        "Resistivity of IEC 60028 (100 % IACS), 0.00393 per kelvin",
        Maturity.Checked,
        [
            "Plated copper can be some per cent worse.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        Copper.Resistivity(x[1]) / x[0];
}
