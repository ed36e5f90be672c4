namespace Lidoff.Reckoning.Lines;

/// <summary>How long a signal takes along a line, per length.</summary>
public sealed class LineDelayCalculation : Calculation<LineDelayCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "line_delay",
        "How long a signal takes along a line, per length.",
        ReckonUnits.PicosecondPerMillimetre,
        [
            Given.Of("permittivity", Units.One, 1, 100, "effective relative permittivity"),
        ],
        "Square root of the effective permittivity over the speed of light (exact in the SI)",
        Maturity.Checked,
        []);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        T.Sqrt(x[0]) / Nature.SpeedOfLight;
}
