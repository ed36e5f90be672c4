using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Quantities;

namespace Lidoff.Numbers.Typed.Codes;

/// <summary>
/// Preferred values of IEC 60063. E48, E96 and E192 are the rounded geometric series, but for 920 in E192 (the formula gives 919);
/// E24 and the coarser ones are a table that differs from the formula in eight places.
/// </summary>
public static class ESeries
{
    private static readonly int[] E24 = [10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91];
    private static readonly Dictionary<int, int[]> Series = new()
    {
        [3] = Every(8), [6] = Every(4), [12] = Every(2), [24] = E24, [48] = Formula(48), [96] = Formula(96), [192] = Formula(192),
    };

    /// <summary>The sizes there are: 3, 6, 12, 24, 48, 96, 192.</summary>
    public static IReadOnlyList<int> Sizes { get; } = [3, 6, 12, 24, 48, 96, 192];

    /// <summary>One decade of a series: two figures up to E24 (10 to 91), three from E48 on (100 to 976 or so).</summary>
    public static IReadOnlyList<int> Figures(int size)
    {
        Guard.That(Series.ContainsKey(size), "one of the E series");
        return Series[size];
    }

    /// <summary>True when a value above zero is in the series, to a millionth.</summary>
    public static bool Contains(int size, double value) => Math.Abs(Nearest(size, value) / value - 1) < 1e-6;

    /// <summary>The coarsest series that holds the value; null when none does.</summary>
    public static int? Coarsest(double value)
    {
        foreach (var size in Sizes)
        {
            if (Contains(size, value)) return size;
        }

        return null;
    }

    /// <summary>The value of the series that is nearest by ratio; of two equally near, the smaller. For values from 1e-15 to 1e15.</summary>
    public static double Nearest(int size, double value)
    {
        Guard.That(Guard.Positive(value) is >= 1e-15 and <= 1e15, "a value from 1e-15 to 1e15");
        var figures = Figures(size);
        var digits = size > 24 ? 2 : 1;
        var (best, ratio) = (0.0, double.PositiveInfinity);
        var decade = (int)Math.Floor(Elementary.Log10(value));
        for (var exponent = decade - 1; exponent <= decade + 1; exponent++)
        {
            foreach (var figure in figures)
            {
                var candidate = PowersOfTen.Scale(figure, exponent - digits);
                var off = candidate > value ? candidate / value : value / candidate;
                if (off < ratio) (best, ratio) = (candidate, off);
            }
        }

        return best;
    }

    private static int[] Every(int step) => [.. E24.Where((_, at) => at % step == 0)];

    private static int[] Formula(int size) =>
        [.. Enumerable.Range(0, size).Select(n => (int)Math.Round(100 * Elementary.Pow(10, (double)n / size))).Select(figure => size == 192 && figure == 919 ? 920 : figure)];
}
