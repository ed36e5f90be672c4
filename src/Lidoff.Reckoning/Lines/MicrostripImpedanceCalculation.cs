namespace Lidoff.Reckoning.Lines;

/// <summary>The impedance of a trace above a plane.</summary>
public sealed class MicrostripImpedanceCalculation : Calculation<MicrostripImpedanceCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "microstrip_impedance",
        "The impedance of a trace above a plane.",
        Units.Ohm,
        [
            Given.Of("width", Units.Millimetre, 0.005, 100, "width of the trace"),
            Given.Of("height", Units.Millimetre, 0.005, 20, "dielectric between trace and plane"),
            Given.Of("permittivity", Units.One, 1, 30, "relative permittivity of the dielectric"),
            Given.Of("thickness", Units.Millimetre, 0, 0.5, "thickness of the copper", 0),
        ],
        "Hammerstad and Jensen, Accurate models for microstrip computer-aided design, 1980, with their thickness " +
            "correction",
        Maturity.Checked,
        [
            "Solder mask, cover film and neighbours lower it by some per cent.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        Microstrip.Impedance(x);
}
