using Lidoff.Numbers;
using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Standards;

/// <summary>Weighs standard sizes against a measured length. Nothing is called standard below a likelihood ratio of ten.</summary>
public static class StandardRank
{
    /// <summary>The least likelihood ratio for a snap.</summary>
    public const double LeastRatio = 10;

    // "No standard at all" is spread evenly over the logarithm within a factor e of the length: density 1/x at x. Wider, and every
    // length near a size would snap; narrower, and none could.

    /// <summary>The standard size that <paramref name="mm"/> ± <paramref name="uMm"/> must be, or null.</summary>
    /// <param name="mm">Measured length, mm, above zero.</param>
    /// <param name="uMm">Standard uncertainty, mm.</param>
    /// <param name="sizes">Sizes that come into question.</param>
    public static StandardSnap? Snap(double mm, double uMm, IReadOnlyList<StandardSize> sizes)
    {
        Guard.Positive(mm);
        Guard.NotNegative(uMm);
        StandardSize? best = null;
        var (first, second) = (double.NegativeInfinity, -Elementary.Log(mm));
        foreach (var size in sizes)
        {
            var likelihood = LogDensity(mm - size.Mm, Math.Sqrt((uMm * uMm) + (size.SpreadMm * size.SpreadMm)));
            if (likelihood > first)
            {
                // The same length under another name is no rival.
                if (best is not null && best.Mm != size.Mm) second = Math.Max(second, first);
                (best, first) = (size, likelihood);
            }
            else if (best is not null && best.Mm != size.Mm)
            {
                second = Math.Max(second, likelihood);
            }
        }

        if (best is null || first - second < Elementary.Log(LeastRatio)) return null;
        return new(best.Mm, best.Kind, Rounded(Elementary.Exp(first - second)));
    }

    /// <summary>Logarithm of the normal density at <paramref name="distance"/> for standard deviation <paramref name="sd"/>.</summary>
    internal static double LogDensity(double distance, double sd) =>
        (-0.5 * (distance / sd) * (distance / sd)) - Elementary.Log(sd) - 0.9189385332046727;

    private static double Rounded(double ratio) => ratio >= 100 ? Math.Round(ratio) : Math.Round(ratio, 1);
}
