using Lidoff.Numbers.Spreads;

namespace Lidoff.Seeing.Measuring.Cameras;

/// <summary>Fixed, evenly spread points of a five-dimensional normal distribution: Halton's sequence (Num. Math. 2, 1960) through the normal quantile.</summary>
internal static class NormalPoints
{
    private static readonly int[] Bases = [2, 3, 5, 7, 11];

    // The first points of the sequence lie on one line in the higher bases.
    private const int Skipped = 37;

    /// <summary>How many there are.</summary>
    public const int Count = 512;

    /// <summary>The points.</summary>
    public static IReadOnlyList<double[]> All { get; } =
        [.. Enumerable.Range(Skipped, Count).Select(index => Bases.Select(b => NormalDistribution.Quantile(Radical(index, b))).ToArray())];

    private static double Radical(int index, int b)
    {
        var (value, part) = (0.0, 1.0 / b);
        for (; index > 0; index /= b, part /= b) value += index % b * part;
        return value;
    }
}
