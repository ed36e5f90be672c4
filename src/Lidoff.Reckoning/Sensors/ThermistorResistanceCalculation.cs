namespace Lidoff.Reckoning.Sensors;

/// <summary>
/// The resistance of an NTC thermistor at a temperature. The third wire of a cell is usually one: 10 kohm at 25 degrees,
/// B 3435 to 3950.
/// </summary>
public sealed class ThermistorResistanceCalculation : Calculation<ThermistorResistanceCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "thermistor_resistance",
        "The resistance of an NTC thermistor at a temperature.",
        Units.Ohm,
        [
            Given.Of("nominal", Units.Ohm, 1, 10000000.0, "resistance at the nominal temperature"),
            Given.Of("b", Units.Kelvin, 500, 8000, "B constant"),
            Given.Of("temperature", Units.DegreeCelsius, -55, 200, "its temperature"),
            Given.Of("nominal_temperature", Units.DegreeCelsius, -55, 200, "where the nominal resistance holds", 25),
        ],
        "Two-point B law of NTC thermistors: R = R0 exp(B (1 / T - 1 / T0))",
        Maturity.Checked,
        [
            "B itself drifts with temperature: trust it near the two points it was taken from.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        x[0] * T.Exp(x[1] * (1 / x[2] - 1 / x[3]));
}
