using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Reals;

namespace Lidoff.Numbers.Spreads;

/// <summary>The standard normal distribution.</summary>
public static class NormalDistribution
{
    // Rational approximations of M. J. Wichura, "The percentage points of the normal distribution", algorithm AS 241
    // (Applied Statistics 37, 1988), routine PPND16: about 1 part in 10¹⁶.
    private static ReadOnlySpan<double> CentreTop =>
    [
        3.3871328727963666080e0, 1.3314166789178437745e2, 1.9715909503065514427e3, 1.3731693765509461125e4,
        4.5921953931549871457e4, 6.7265770927008700853e4, 3.3430575583588128105e4, 2.5090809287301226727e3,
    ];

    private static ReadOnlySpan<double> CentreBottom =>
    [
        1, 4.2313330701600911252e1, 6.8718700749205790830e2, 5.3941960214247511077e3,
        2.1213794301586595867e4, 3.9307895800092710610e4, 2.8729085735721942674e4, 5.2264952788528545610e3,
    ];

    private static ReadOnlySpan<double> MiddleTop =>
    [
        1.42343711074968357734e0, 4.63033784615654529590e0, 5.76949722146069140550e0, 3.64784832476320460504e0,
        1.27045825245236838258e0, 2.41780725177450611770e-1, 2.27238449892691845833e-2, 7.74545014278341407640e-4,
    ];

    private static ReadOnlySpan<double> MiddleBottom =>
    [
        1, 2.05319162663775882187e0, 1.67638483018380384940e0, 6.89767334985100004550e-1,
        1.48103976427480074590e-1, 1.51986665636164571966e-2, 5.47593808499534494600e-4, 1.05075007164441684324e-9,
    ];

    private static ReadOnlySpan<double> TailTop =>
    [
        6.65790464350110377720e0, 5.46378491116411436990e0, 1.78482653991729133580e0, 2.96560571828504891230e-1,
        2.65321895265761230930e-2, 1.24266094738807843860e-3, 2.71155556874348757815e-5, 2.01033439929228813265e-7,
    ];

    private static ReadOnlySpan<double> TailBottom =>
    [
        1, 5.99832206555887937690e-1, 1.36929880922735805310e-1, 1.48753612908506148525e-2,
        7.86869131145613259100e-4, 1.84631831751005468180e-5, 1.42151175831644588870e-7, 2.04426310338993978564e-15,
    ];

    /// <summary>The value below which a share <paramref name="p"/> lies; p between 0 and 1, ends excluded.</summary>
    public static double Quantile(double p)
    {
        Guard.That(p > 0 && p < 1, "a share between 0 and 1");
        return QuantileOf<Scalar>(p).Value;
    }

    /// <summary>Share of all draws below <paramref name="x"/>.</summary>
    public static double Cdf(double x)
    {
        if (double.IsNaN(x)) return x;
        if (x > 0) return 1 - Cdf(-x);
        if (x < -39) return 0;
        return x > -1 ? 0.5 + (Density(x) * Series(x)) : Density(x) * Tail(-x);
    }

    /// <summary>Density at <paramref name="x"/>.</summary>
    public static double Density(double x) => 0.39894228040143267794 * HalfSquare(x);

    // e to the −x²/2 with the square in two words: in the far tail its rounding would cost digits.
    private static double HalfSquare(double x)
    {
        var square = x * x;
        var lost = Math.FusedMultiplyAdd(x, x, -square);
        return double.IsInfinity(square) ? 0 : Elementary.Exp(-0.5 * square) * (1 - (0.5 * lost));
    }

    // x + x³/3 + x⁵/15 + x⁷/105 + …
    private static double Series(double x)
    {
        double term = x, sum = x;
        for (var n = 3; Math.Abs(term) > 1e-18 * Math.Abs(sum); n += 2)
        {
            term *= x * x / n;
            sum += term;
        }

        return sum;
    }

    // Laplace's continued fraction 1/(x + 1/(x + 2/(x + 3/…))), x ≥ 1. Its error falls like e^(−2x√(2n)); n is more than enough.
    private static double Tail(double x)
    {
        var fraction = x;
        for (var n = 20 + (int)(300 / (x * x)); n >= 1; n--) fraction = x + (n / fraction);
        return 1 / fraction;
    }

    /// <summary>The quantile for one number or many, p strictly between 0 and 1.</summary>
    internal static T QuantileOf<T>(T p)
        where T : struct, IReal<T>, ICore<T>
    {
        var q = p - 0.5;
        var square = q * q;
        var r = 0.180625 - square;
        var centre = q * Elementary.Polynomial(r, CentreTop) / Elementary.Polynomial(r, CentreBottom);

        var depth = T.Sqrt(-T.Log(T.Min(p, 1.0 - p)));
        var middle = Elementary.Polynomial(depth - 1.6, MiddleTop) / Elementary.Polynomial(depth - 1.6, MiddleBottom);
        var tail = Elementary.Polynomial(depth - 5.0, TailTop) / Elementary.Polynomial(depth - 5.0, TailBottom);
        var size = T.IfLess(5.0, depth, tail, middle);
        return T.IfLess(0.180625, square, T.IfLess(q, 0.0, -size, size), centre);
    }
}
