namespace Lidoff.Reckoning.Energy;

/// <summary>The hydrogen fluoride that a burning lithium cell can set free. A figure for respect, not for planning.</summary>
public sealed class FireFluorideCalculation : Calculation<FireFluorideCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "fire_fluoride",
        "The hydrogen fluoride that a burning lithium cell can set free.",
        Units.Milligram,
        [
            Given.Of("energy", Units.WattHour, 0.001, 100000.0, "energy of the full cell"),
            Given.Of("release", ReckonUnits.MilligramPerWattHour, 1, 500, "measured: 20 to 200", 100),
        ],
        "Larsson and others 2017, Scientific Reports 7:10018: 20 to 200 mg for each watt-hour",
        Maturity.Checked,
        [
            "Fire gas of a cell is toxic. A hot or hissing cell: leave, ventilate if that is safe, call for help; local " +
                "fire rules come first.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        x[0] * x[1];
}
