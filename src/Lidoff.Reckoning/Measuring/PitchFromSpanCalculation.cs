namespace Lidoff.Reckoning.Measuring;

/// <summary>The pitch of a row of pins from the distance of its first and last.</summary>
public sealed class PitchFromSpanCalculation : Calculation<PitchFromSpanCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "pitch_from_span",
        "The pitch of a row of pins from the distance of its first and last.",
        Units.Millimetre,
        [
            Given.Of("span", Units.Millimetre, 0.1, 1000, "first to last pin, middle to middle"),
            Given.Of("pins", Units.One, 2, 1000, "pins in the row"),
        ],
        "A row of n pins has n - 1 gaps",
        Maturity.Checked,
        []);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        x[0] / (x[1] - 1);
}
