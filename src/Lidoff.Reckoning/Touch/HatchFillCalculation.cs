namespace Lidoff.Reckoning.Touch;

/// <summary>How much of a hatched plane is copper.</summary>
public sealed class HatchFillCalculation : Calculation<HatchFillCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "hatch_fill",
        "How much of a hatched plane is copper.",
        Units.Percent,
        [
            Given.Of("line", Units.Millimetre, 0.01, 100, "width of the lines"),
            Given.Of("pitch", Units.Millimetre, 0.02, 200, "distance of the lines, middle to middle"),
        ],
        "Crossed lines: 1 - (1 - w / p)^2",
        Maturity.Checked,
        []);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T>
    {
        T open = 1 - x[0] / x[1];
        return 1 - open * open;
    }
}
