using Lidoff.Numbers;

namespace Lidoff.Seeing.Measuring;

/// <summary>The normal curve and the 90 % interval of a mixture of normals.</summary>
internal static class NormalCurve
{
    /// <summary>Half-width of the central 90 % in standard deviations (GUM table G.2, infinite degrees of freedom: 1.64(5)).</summary>
    public const double NinetyPercent = 1.6448536269514722;

    /// <summary>Density at <paramref name="z"/> standard deviations times σ.</summary>
    public static double Density(double z) => Elementary.Exp(-0.5 * z * z) / 2.5066282746310002;

    /// <summary>Share below <paramref name="z"/>: Abramowitz and Stegun 26.2.17, error below 7.5e-8, which no interval shows.</summary>
    public static double Below(double z)
    {
        var t = 1 / (1 + (0.2316419 * Math.Abs(z)));
        var tail = Density(z) * t * (0.319381530 + (t * (-0.356563782 + (t * (1.781477937 + (t * (-1.821255978 + (t * 1.330274429))))))));
        return z >= 0 ? 1 - tail : tail;
    }

    /// <summary>The value below which <paramref name="share"/> of the mixture lies, by halving (fixed count, so equal bits everywhere).</summary>
    public static double Quantile(IReadOnlyList<(double Weight, double Mean, double Sd)> mixture, double share)
    {
        if (mixture.Count == 1) return mixture[0].Mean + (Math.Sign(share - 0.5) * NinetyPercent * mixture[0].Sd);
        var low = mixture.Min(part => part.Mean - (8 * part.Sd));
        var high = mixture.Max(part => part.Mean + (8 * part.Sd));
        for (var round = 0; round < 60; round++)
        {
            var middle = (low + high) / 2;
            var below = 0.0;
            foreach (var (weight, mean, sd) in mixture) below += weight * (sd > 0 ? Below((middle - mean) / sd) : middle >= mean ? 1 : 0);
            if (below < share) low = middle;
            else high = middle;
        }

        return (low + high) / 2;
    }
}
