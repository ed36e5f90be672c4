namespace Lidoff.Numbers.Spreads;

/// <summary>The regularized incomplete beta function, from which Student's t follows.</summary>
internal static class IncompleteBeta
{
    private const int MostSteps = 2000;

    /// <summary>I_x(a, b) for x from 0 to 1, a and b above zero.</summary>
    public static double Regularized(double x, double a, double b)
    {
        if (x <= 0) return 0;
        if (x >= 1) return 1;
        return x < (a + 1) / (a + b + 2) ? Front(x, a, b) * Fraction(x, a, b) / a : 1 - (Front(x, a, b) * Fraction(1 - x, b, a) / b);
    }

    private static double Front(double x, double a, double b) => Elementary.Exp(
        Elementary.LogGamma(a + b) - Elementary.LogGamma(a) - Elementary.LogGamma(b)
        + (a * Elementary.Log(x)) + (b * Elementary.Log1p(-x)));

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
