namespace Lidoff.Reckoning.Lines;

/// <summary>
/// The impedance of a trace midway between two planes. Exact for thin copper: a ratio of elliptic integrals, by the
/// arithmetic-geometric mean.
/// </summary>
public sealed class StriplineImpedanceCalculation : Calculation<StriplineImpedanceCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "stripline_impedance",
        "The impedance of a trace midway between two planes.",
        Units.Ohm,
        [
            Given.Of("width", Units.Millimetre, 0.005, 100, "width of the trace"),
            Given.Of("spacing", Units.Millimetre, 0.01, 20, "distance of the planes"),
            Given.Of("permittivity", Units.One, 1, 30, "relative permittivity"),
        ],
        "Conformal map of the thin centred stripline (Cohn 1954)",
        Maturity.Checked,
        []);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T>
    {
        // Far past any real line the hyperbolic functions leave a double's range.
        var angle = T.Min(Math.PI / 2 * x[0] / x[1], 300);
        var fall = T.Exp(-2 * angle);
        var k = 2 * T.Exp(-angle) / (1 + fall);
        var complement = (1 - fall) / (1 + fall);
        return Nature.VacuumImpedance / 4 / T.Sqrt(x[2]) * Elliptic.Mean(k) / Elliptic.Mean(complement);
    }
}
