namespace Lidoff.Reckoning.Lines;

/// <summary>The impedance of a trace between two planes on its own layer, no plane below. Thick board, thin copper.</summary>
public sealed class CoplanarImpedanceCalculation : Calculation<CoplanarImpedanceCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "coplanar_impedance",
        "The impedance of a trace between two planes on its own layer, no plane below.",
        Units.Ohm,
        [
            Given.Of("width", Units.Millimetre, 0.005, 100, "width of the trace"),
            Given.Of("gap", Units.Millimetre, 0.005, 20, "gap to the plane on each side"),
            Given.Of("permittivity", Units.One, 1, 30, "relative permittivity of the board"),
        ],
        "Conformal map of the coplanar waveguide on a thick substrate (Wen 1969)",
        Maturity.Checked,
        [
            "A plane below, a thin board or a shield above lower it.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T>
    {
        T k = x[0] / (x[0] + 2 * x[1]);
        T complement = T.Sqrt(1 - k * k);
        T permittivity = (x[2] + 1) / 2;
        return Nature.VacuumImpedance / 4 / T.Sqrt(permittivity) * Elliptic.Mean(complement) / Elliptic.Mean(k);
    }
}
