namespace Lidoff.Reckoning.Sensors;

/// <summary>The temperature of an NTC thermistor from its resistance.</summary>
public sealed class ThermistorTemperatureCalculation : Calculation<ThermistorTemperatureCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "thermistor_temperature",
        "The temperature of an NTC thermistor from its resistance.",
        Units.DegreeCelsius,
        [
            Given.Of("nominal", Units.Ohm, 1, 10000000.0, "resistance at the nominal temperature"),
            Given.Of("b", Units.Kelvin, 500, 8000, "B constant"),
            Given.Of("resistance", Units.Ohm, 1, 100000000.0, "measured resistance"),
            Given.Of("nominal_temperature", Units.DegreeCelsius, -55, 200, "where the nominal resistance holds", 25),
        ],
        "Two-point B law of NTC thermistors: R = R0 exp(B (1 / T - 1 / T0))",
        Maturity.Checked,
        [
            "B itself drifts with temperature: trust it near the two points it was taken from.",
            "A charging cell above 45 degrees should slow down, above 60 stop; its maker's limits come first.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        1 / (1 / x[3] + T.Log(x[2] / x[0]) / x[1]);
}
