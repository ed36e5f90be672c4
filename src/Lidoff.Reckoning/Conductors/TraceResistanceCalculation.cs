namespace Lidoff.Reckoning.Conductors;

/// <summary>The resistance of a copper trace.</summary>
public sealed class TraceResistanceCalculation : Calculation<TraceResistanceCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "trace_resistance",
        "The resistance of a copper trace.",
        Units.Milliohm,
        [
            Given.Of("length", Units.Millimetre, 0.01, 100000.0, "length"),
            Given.Of("width", Units.Millimetre, 0.005, 1000, "width"),
            Given.Of("thickness", Units.Micrometre, 0.1, 1000, "thickness of the copper"),
            Given.Of("temperature", Units.DegreeCelsius, -60, 200, "its temperature", 20),
        ],
        "Resistivity of IEC 60028 (100 % IACS), 0.00393 per kelvin",
        Maturity.Checked,
        [
            "Plated copper can be some per cent worse; etched edges narrow the trace.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        Copper.Resistivity(x[3]) * x[0] / (x[1] * x[2]);
}
