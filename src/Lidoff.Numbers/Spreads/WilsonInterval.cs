using Lidoff.Numbers.Failing;

namespace Lidoff.Numbers.Spreads;

/// <summary>What a count of hits says about a rate (E. B. Wilson, Journal of the American Statistical Association 22, 1927).</summary>
public static class WilsonInterval
{
    /// <summary>
    /// The interval of rates, within 0 to 1, that <paramref name="hits"/> of <paramref name="trials"/> (at least one) leave open at the
    /// coverage (0 to 1, ends excluded). Holds its coverage fairly well down to few trials, and for no hits at all.
    /// </summary>
    public static Interval Of(int hits, int trials, double coverage = 0.95)
    {
        Guard.That(trials > 0 && hits >= 0 && hits <= trials, "hits from zero to the number of trials, at least one trial");
        var k = StudentT.TwoSided(double.PositiveInfinity, coverage);
        double n = trials, rate = hits / n, square = k * k;
        var middle = (rate + (square / (2 * n))) / (1 + (square / n));
        var half = k / (1 + (square / n)) * Math.Sqrt((rate * (1 - rate) / n) + (square / (4 * n * n)));
        return new(hits == 0 ? 0 : middle - half, hits == trials ? 1 : middle + half);
    }
}
