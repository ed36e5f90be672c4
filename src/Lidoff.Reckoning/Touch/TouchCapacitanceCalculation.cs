namespace Lidoff.Reckoning.Touch;

/// <summary>The capacitance of a finger on a touch pad, at most. Only where finger and pad overlap counts.</summary>
public sealed class TouchCapacitanceCalculation : Calculation<TouchCapacitanceCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "touch_capacitance",
        "The capacitance of a finger on a touch pad, at most.",
        Units.Picofarad,
        [
            Given.Of("diameter", Units.Millimetre, 0.5, 100, "diameter of the overlap of finger and pad"),
            Given.Of("cover", Units.Millimetre, 0.02, 20, "thickness of the cover"),
            Given.Of("permittivity", Units.One, 1, 20, "relative permittivity of the cover"),
        ],
        "Plate capacitor, no fringe: e0 er A / d",
        Maturity.Checked,
        [
            "Fringe adds: 17 % where the cover is a tenth of the radius, 39 % at a quarter.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        Nature.VacuumPermittivity * x[2] * Math.PI / 4 * x[0] * x[0] / x[1];
}
