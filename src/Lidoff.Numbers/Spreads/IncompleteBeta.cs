namespace Lidoff.Numbers.Spreads;

/// <summary>The regularized incomplete beta function, from which Student's t follows.</summary>
internal static class IncompleteBeta
{
    private const int MostSteps = 2000;

    /// <summary>I_x(a, ½) for a above zero, with both x and 1 − x given, because each may be too small to be had from the other.</summary>
    public static double WithHalf(double x, double oneLessX, double a)
    {
        if (x <= 0) return 0;
        if (oneLessX <= 0) return 1;
        var logX = x > 0.5 ? Elementary.Log1p(-oneLessX) : Elementary.Log(x);
        var front = Elementary.Exp((a * logX) - LogBetaWithHalf(a)) * Math.Sqrt(oneLessX);
        return x < (a + 1) / (a + 2.5) ? front * Fraction(x, a, 0.5) / a : 1 - (front * Fraction(oneLessX, 0.5, a) / 0.5);
    }

    // ln B(a, ½) = ln Γ(½) − ln(Γ(a + ½)/Γ(a)); for large a the ratio by its own series (from NIST DLMF 5.11.8), since the
    // difference of two large logarithms would lose digits.
    private static double LogBetaWithHalf(double a)
    {
        const double logRootPi = 0.5723649429247001;
        if (a < 15) return logRootPi + Elementary.LogGamma(a) - Elementary.LogGamma(a + 0.5);
        var z = 1 / (a * a);
        var series = 1.0 / 8 - (z * (1.0 / 192 - (z * (1.0 / 640 - (z * (17.0 / 14336 - (z * 31.0 / 18432)))))));
        return logRootPi - (0.5 * Elementary.Log(a)) + (series / a);
    }

    // The classical continued fraction (NIST DLMF 8.17.22), evaluated forward by Lentz's method.
    private static double Fraction(double x, double a, double b)
    {
        const double tiny = 1e-300;
        double c = 1, d = 1 - ((a + b) * x / (a + 1));
        d = 1 / (Math.Abs(d) < tiny ? tiny : d);
        var result = d;
        for (var m = 1; m <= MostSteps; m++)
        {
            var even = m * (b - m) * x / ((a + (2 * m) - 1) * (a + (2 * m)));
            var odd = -(a + m) * (a + b + m) * x / ((a + (2 * m)) * (a + (2 * m) + 1));
            Step(even);
            if (Math.Abs(Step(odd) - 1) < 1e-16) break;
        }

        return result;

        double Step(double coefficient)
        {
            d = 1 + (coefficient * d);
            d = 1 / (Math.Abs(d) < tiny ? tiny : d);
            c = 1 + (coefficient / c);
            if (Math.Abs(c) < tiny) c = tiny;
            result *= c * d;
            return c * d;
        }
    }
}
