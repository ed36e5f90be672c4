namespace Lidoff.Reckoning.Measuring;

/// <summary>The coefficient of thermal expansion from two lengths and temperatures.</summary>
public sealed class ThermalExpansionCalculation : Calculation<ThermalExpansionCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "thermal_expansion",
        "The coefficient of thermal expansion from two lengths and temperatures.",
        ReckonUnits.MicroPerKelvin,
        [
            Given.Of("length_cold", Units.Metre, 0.0001, 100, "length at the lower temperature"),
            Given.Of("length_hot", Units.Metre, 0.0001, 100, "length at the higher"),
            Given.Of("cold", Units.Kelvin, 50, 2000, "lower temperature"),
            Given.Of("hot", Units.Kelvin, 50, 2000, "higher temperature"),
        ],
        "NIST Technical Note 1900, example E13",
        Maturity.Checked,
        []);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        (x[1] - x[0]) / (x[0] * (x[3] - x[2]));
}
