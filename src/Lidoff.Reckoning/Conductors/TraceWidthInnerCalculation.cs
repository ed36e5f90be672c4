namespace Lidoff.Reckoning.Conductors;

/// <summary>The width a copper trace on an inner layer needs for a steady current.</summary>
public sealed class TraceWidthInnerCalculation : Calculation<TraceWidthInnerCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "trace_width_inner",
        "The width a copper trace on an inner layer needs for a steady current.",
        Units.Millimetre,
        [
            Given.Of("current", Units.Ampere, 0.01, 17.5, "steady current"),
            Given.Of("rise", Units.Kelvin, 1, 100, "allowed rise of temperature"),
            Given.Of("thickness", Units.Micrometre, 5, 110, "thickness of the copper"),
        ],
        "IPC-2221: I = 0.024 dT^0.44 A^0.725, A in square mils",
        Maturity.Checked,
        [
            "Steady current in still air; fitted to old charts, usually on the safe side, no licence for hot boards on " +
                "skin.",
            "The older IPC-D-275 fit differs by up to 30 %.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        Ipc2221.Width(x[0], x[1], x[2], 0.024);
}
