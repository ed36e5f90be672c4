namespace Lidoff.Reckoning.Energy;

/// <summary>
/// Energy per outer volume of a box-shaped cell. The quick test whether a printed capacity can be true for a cell of that
/// size.
/// </summary>
public sealed class EnergyDensityCalculation : Calculation<EnergyDensityCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "energy_density",
        "Energy per outer volume of a box-shaped cell.",
        ReckonUnits.WattHourPerLitre,
        [
            Given.Of("energy", Units.WattHour, 0.0001, 100000.0, "energy of the full cell"),
            Given.Of("length", Units.Millimetre, 1, 1000, "outer length without tabs"),
            Given.Of("width", Units.Millimetre, 1, 1000, "outer width"),
            Given.Of("thickness", Units.Millimetre, 0.2, 200, "outer thickness"),
        ],
        "Energy over outer volume",
        Maturity.Checked,
        [
            "Whole pouches, from memory: under 0.5 mL 150-260 Wh/L, 0.5-1.5 mL 230-400, 1.5-4 mL 300-450, above 4 mL " +
                "400-650. A figure far above its band asks for a second look at the capacity.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        x[0] / (x[1] * x[2] * x[3]);
}
