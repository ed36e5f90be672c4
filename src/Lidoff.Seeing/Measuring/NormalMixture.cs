using Lidoff.Numbers.Spreads;

namespace Lidoff.Seeing.Measuring;

/// <summary>Quantiles of a mixture of normals.</summary>
internal static class NormalMixture
{
    // Parts of a hundredth each: their width is far below that of the whole.
    private const int Most = 100;

    // Of the last of Newton's steps, which are squared each time: what is left is far below what results are rounded to.
    private const double Enough = 1e-8;

    private const int Rounds = 60;

    // What lies beyond so many standard deviations is less than a double's last digit.
    private const double Beyond = 8.5;

    /// <summary>The value below which <paramref name="share"/> of the mixture lies, by the same steps everywhere.</summary>
    public static double Quantile(IReadOnlyList<(double Weight, double Mean, double Sd)> mixture, double share)
    {
        if (mixture.Count == 1) return mixture[0].Mean + (NormalDistribution.Quantile(share) * mixture[0].Sd);
        if (mixture.Count > 2 * Most) mixture = Thinned(mixture);
        var low = mixture.Min(part => part.Mean - (8 * part.Sd));
        var high = mixture.Max(part => part.Mean + (8 * part.Sd));
        // Newton's step where it stays between the bounds, else the half: a handful of rounds instead of forty.
        // Begun where a single normal of the same mean and width has it, a few rounds are left.
        var (first, second) = (0.0, 0.0);
        foreach (var (weight, mean, sd) in mixture) (first, second) = (first + (weight * mean), second + (weight * ((mean * mean) + (sd * sd))));
        var at = Math.Clamp(first + (NormalDistribution.Quantile(share) * Math.Sqrt(Math.Max(0, second - (first * first)))), low, high);
        for (var round = 0; round < Rounds; round++)
        {
            var (below, density) = (0.0, 0.0);
            foreach (var (weight, mean, sd) in mixture)
            {
                below += weight * Below(at - mean, sd);
                if (sd > 0 && Math.Abs(at - mean) < Beyond * sd) density += weight * NormalDistribution.Density((at - mean) / sd) / sd;
            }

            if (below < share) low = at;
            else high = at;
            var next = density > 0 ? at - ((below - share) / density) : double.NaN;
            if (!(next > low && next < high)) next = (low + high) / 2;
            if (Math.Abs(next - at) <= Enough * (high - low + Math.Abs(at))) return next;
            at = next;
        }

        return at;
    }

    private static double Below(double distance, double sd) =>
        distance >= Beyond * sd ? 1 : distance <= -Beyond * sd ? 0 : NormalDistribution.Cdf(distance / sd);

    /// <summary>Fewer parts with nearly the same sum: neighbours in the mean are put together by weight, mean and variance.</summary>
    public static IReadOnlyList<(double Weight, double Mean, double Sd)> Thinned(IReadOnlyList<(double Weight, double Mean, double Sd)> mixture)
    {
        var (thin, weight, first, second) = (new List<(double, double, double)>(), 0.0, 0.0, 0.0);
        var sorted = mixture.ToArray();
        // By keys alone: thousands of lengths of one picture spent a fifth of their time on comparing triples.
        Array.Sort(Array.ConvertAll(sorted, part => part.Mean), sorted);
        foreach (var part in sorted)
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
