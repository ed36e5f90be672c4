using Lidoff.Numbers.Spreads;

namespace Lidoff.Seeing.Measuring;

/// <summary>Quantiles of a mixture of normals.</summary>
internal static class NormalMixture
{
    /// <summary>Half-width of the central 90 % in standard deviations (GUM table G.2, infinite degrees of freedom: 1.64(5)).</summary>
    public const double NinetyPercent = 1.6448536269514722;

    // Parts of a hundredth each: their width is far below that of the whole.
    private const int Most = 100;

    /// <summary>The value below which <paramref name="share"/> of the mixture lies, by halving (fixed count, so equal bits everywhere).</summary>
    public static double Quantile(IReadOnlyList<(double Weight, double Mean, double Sd)> mixture, double share)
    {
        if (mixture.Count == 1) return mixture[0].Mean + (Math.Sign(share - 0.5) * NinetyPercent * mixture[0].Sd);
        if (mixture.Count > Most) mixture = Thinned(mixture);
        var low = mixture.Min(part => part.Mean - (8 * part.Sd));
        var high = mixture.Max(part => part.Mean + (8 * part.Sd));
        for (var round = 0; round < 60; round++)
        {
            var middle = (low + high) / 2;
            var below = 0.0;
            foreach (var (weight, mean, sd) in mixture) below += weight * (sd > 0 ? NormalDistribution.Cdf((middle - mean) / sd) : middle >= mean ? 1 : 0);
            if (below < share) low = middle;
            else high = middle;
        }

        return (low + high) / 2;
    }

    /// <summary>Fewer parts with nearly the same sum: neighbours in the mean are put together by weight, mean and variance.</summary>
    private static List<(double Weight, double Mean, double Sd)> Thinned(IReadOnlyList<(double Weight, double Mean, double Sd)> mixture)
    {
        var (thin, weight, first, second) = (new List<(double, double, double)>(), 0.0, 0.0, 0.0);
        foreach (var part in mixture.OrderBy(part => part.Mean).ThenBy(part => part.Sd).ThenBy(part => part.Weight))
        {
            weight += part.Weight;
            first += part.Weight * part.Mean;
            second += part.Weight * ((part.Mean * part.Mean) + (part.Sd * part.Sd));
            if (weight >= 1.0 / Most) Close();
        }

        if (weight > 0) Close();
        return thin;

        void Close()
        {
            var mean = first / weight;
            thin.Add((weight, mean, Math.Sqrt(Math.Max(0, (second / weight) - (mean * mean)))));
            (weight, first, second) = (0, 0, 0);
        }
    }
}
