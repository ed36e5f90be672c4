using Lidoff.Numbers.Failing;

namespace Lidoff.Numbers.Spreads;

/// <summary>Student's t distribution: how far a mean of few readings can be off, in standard uncertainties.</summary>
public static class StudentT
{
    /// <summary>
    /// The coverage factor k: a share <paramref name="coverage"/> (0 to 1, ends excluded) of all draws lies within ± k.
    /// Degrees of freedom above zero, infinite for the normal (GUM table G.2).
    /// </summary>
    public static double TwoSided(double dof, double coverage)
    {
        Guard.That(coverage > 0 && coverage < 1, "a coverage between 0 and 1");
        return Upper((1 - coverage) / 2, dof);
    }

    /// <summary>The value below which a share <paramref name="p"/> lies; p between 0 and 1, ends excluded.</summary>
    public static double Quantile(double p, double dof)
    {
        Guard.That(p > 0 && p < 1, "a share between 0 and 1");
        return p < 0.5 ? -Upper(p, dof) : p > 0.5 ? Upper(1 - p, dof) : 0;
    }

    /// <summary>Share of all draws below <paramref name="t"/>.</summary>
    public static double Cdf(double t, double dof)
    {
        Guard.That(dof > 0, "degrees of freedom above zero");
        if (double.IsInfinity(dof)) return NormalDistribution.Cdf(t);
        var above = AboveOf(Math.Abs(t), dof);
        return t > 0 ? 1 - above : above;
    }

    // The point with a share p ≤ 1/2 above it, by Newton steps kept inside a bracket.
    private static double Upper(double p, double dof)
    {
        Guard.That(dof > 0, "degrees of freedom above zero");
        if (double.IsInfinity(dof)) return -NormalDistribution.Quantile(p);
        double low = 0, high = 1;
        while (AboveOf(high, dof) > p && high < 1e300) high *= 2;
        var t = (low + high) / 2;
        for (var step = 0; step < 200; step++)
        {
            var above = AboveOf(t, dof);
            if (above > p) low = t;
            else high = t;
            var next = t + ((above - p) / Density(t, dof));
            if (!(next > low && next < high)) next = low + ((high - low) / 2);
            if (Math.Abs(next - t) <= 1e-16 * t) return next;
            t = next;
        }

        return t;
    }

    private static double Density(double t, double dof) => Elementary.Exp(
        Elementary.LogGamma((dof + 1) / 2) - Elementary.LogGamma(dof / 2)
        - (0.5 * Elementary.Log(dof * Math.PI)) - ((dof + 1) / 2 * Elementary.Log1p(t * t / dof)));

    private static double AboveOf(double t, double dof)
    {
        // t²/ν without overflow or loss at either end.
        var ratio = t / dof * t;
        return 0.5 * IncompleteBeta.WithHalf(1 / (1 + ratio), double.IsInfinity(ratio) ? 1 : ratio / (1 + ratio), dof / 2);
    }
}
