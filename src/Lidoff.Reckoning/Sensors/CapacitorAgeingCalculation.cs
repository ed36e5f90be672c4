namespace Lidoff.Reckoning.Sensors;

/// <summary>What is left of a class 2 ceramic capacitor after years. Soldering starts its clock anew.</summary>
public sealed class CapacitorAgeingCalculation : Calculation<CapacitorAgeingCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "capacitor_ageing",
        "What is left of a class 2 ceramic capacitor after years.",
        Units.Percent,
        [
            Given.Of("hours", Units.Hour, 1, 10000000.0, "time since it was last soldered"),
            Given.Of("loss", Units.Percent, 0, 10, "loss for each factor of ten in time: about 2.5 X7R and X5R, up to 7 Y5V and Z5U", 2.5),
        ],
        "Logarithmic ageing law of ferroelectric dielectrics (EIA-521), from one hour on",
        Maturity.Checked,
        [
            "Voltage takes far more than age: a class 2 part at its rated voltage may keep a fifth.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        1 - x[1] * T.Log(x[0] / 3600) / Nature.LogOfTen;
}
