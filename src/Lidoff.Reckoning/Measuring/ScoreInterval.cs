namespace Lidoff.Reckoning.Measuring;

/// <summary>The score interval of a share that was counted (Wilson 1927).</summary>
internal static class ScoreInterval
{
    /// <summary>What both of its ends take.</summary>
    public static readonly IReadOnlyList<CalculationInput> Inputs =
    [
        Given.Of("hits", Units.One, 0, 1000000000.0, "how often it happened"),
        Given.Of("trials", Units.One, 1, 1000000000.0, "out of how many"),
        Given.Of("z", Units.One, 0.1, 6, "normal quantile: 1.645 for 90 %, 1.96 for 95 %", 1.959964),
    ];

    /// <summary>Its middle and half its width, from values in the order of <see cref="Inputs"/>.</summary>
    public static (T Middle, T Half) Of<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T>
    {
        T share = x[0] / x[1], squared = x[2] * x[2] / x[1];
        T spread = T.Sqrt(T.Max(share * (1 - share), 0) * squared + squared * squared / 4);
        return ((share + squared / 2) / (1 + squared), spread / (1 + squared));
    }
}
