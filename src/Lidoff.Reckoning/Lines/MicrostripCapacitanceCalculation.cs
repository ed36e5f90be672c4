namespace Lidoff.Reckoning.Lines;

/// <summary>The capacitance of a trace above a plane, per length. What a flexible tail adds to a bus.</summary>
public sealed class MicrostripCapacitanceCalculation : Calculation<MicrostripCapacitanceCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "microstrip_capacitance",
        "The capacitance of a trace above a plane, per length.",
        ReckonUnits.PicofaradPerMillimetre,
        [
            Given.Of("width", Units.Millimetre, 0.005, 100, "width of the trace"),
            Given.Of("height", Units.Millimetre, 0.005, 20, "dielectric between trace and plane"),
            Given.Of("permittivity", Units.One, 1, 30, "relative permittivity of the dielectric"),
            Given.Of("thickness", Units.Millimetre, 0, 0.5, "thickness of the copper", 0),
        ],
        "Hammerstad and Jensen, Accurate models for microstrip computer-aided design, 1980, with their thickness " +
            "correction; capacitance is delay over impedance",
        Maturity.Checked,
        []);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        T.Sqrt(Microstrip.Permittivity(x)) / (Nature.SpeedOfLight * Microstrip.Impedance(x));
}
