using Lidoff.Numbers.Spreads;

namespace Lidoff.Seeing.Measuring.Cameras;

/// <summary>Fixed, evenly spread points of a five-dimensional normal distribution: Halton's sequence (Num. Math. 2, 1960) through the normal quantile.</summary>
internal static class NormalPoints
{
    private static readonly int[] Bases = [2, 3, 5, 7, 11];

    // The first points of the sequence lie on one line in the higher bases.
    private const int Skipped = 37;

    /// <summary>How many there usually are.</summary>
    public const int Count = 512;

    /// <summary>How many there are where few of the usual ones explain what was seen.</summary>
    public const int More = 8 * Count;

    private static readonly Lazy<IReadOnlyList<double[]>> Further = new(() => [.. Pairs(Skipped, More)]);

    /// <summary>The usual ones, each followed by the one that leans the other way: what a slant to the left adds, one to the right takes off.</summary>
    public static IReadOnlyList<double[]> All { get; } = [.. Pairs(Skipped, Count)];

    /// <summary>So many of them.</summary>
    /// <param name="count">Even, at most <see cref="More"/>.</param>
    /// <param name="seed">0 for the beginning of the sequence; others begin further along it.</param>
    public static IReadOnlyList<double[]> Of(int count, int seed) => (seed, count) switch
    {
        (0, Count) => All,
        (0, More) => Further.Value,
        _ => [.. Pairs(Skipped + (seed * More), count)],
    };

    private static IEnumerable<double[]> Pairs(int from, int count) => Enumerable.Range(from, count / 2)
        .Select(index => Bases.Select(b => NormalDistribution.Quantile(Radical(index, b))).ToArray())
        .SelectMany(point => new[] { point, [-point[0], -point[1], point[2], point[3], point[4]] });

    private static double Radical(int index, int b)
    {
        var (value, part) = (0.0, 1.0 / b);
        for (; index > 0; index /= b, part /= b) value += index % b * part;
        return value;
    }
}
