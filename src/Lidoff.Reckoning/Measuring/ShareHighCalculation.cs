namespace Lidoff.Reckoning.Measuring;

/// <summary>The upper end of the interval for a share that was counted.</summary>
public sealed class ShareHighCalculation : Calculation<ShareHighCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "share_high",
        "The upper end of the interval for a share that was counted.",
        Units.Percent,
        ScoreInterval.Inputs,
        "Wilson 1927, score interval of a share",
        Maturity.Checked,
        [
            "Counts must be independent: ten pictures of one board are not ten boards.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T>
    {
        var (middle, half) = ScoreInterval.Of(x);
        return middle + half;
    }
}
