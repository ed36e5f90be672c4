namespace Lidoff.Reckoning.Measuring;

/// <summary>The upper end of the interval for a share that was counted.</summary>
public sealed class ShareHighCalculation : Calculation<ShareHighCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "share_high",
        "The upper end of the interval for a share that was counted.",
        Units.Percent,
        [
            Given.Of("hits", Units.One, 0, 1000000000.0, "how often it happened"),
            Given.Of("trials", Units.One, 1, 1000000000.0, "out of how many"),
            Given.Of("z", Units.One, 0.1, 6, "normal quantile: 1.645 for 90 %, 1.96 for 95 %", 1.959964),
        ],
        "Wilson 1927, score interval of a share",
        Maturity.Checked,
        [
            "Counts must be independent: ten pictures of one board are not ten boards.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T>
    {
        T share = x[0] / x[1], squared = x[2] * x[2] / x[1];
        T spread = T.Sqrt(T.Max(share * (1 - share), 0) * squared + squared * squared / 4);
        return (share + squared / 2 + spread) / (1 + squared);
    }
}
