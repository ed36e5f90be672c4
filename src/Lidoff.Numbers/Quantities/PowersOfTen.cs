namespace Lidoff.Numbers.Quantities;

/// <summary>Powers of ten, each the double nearest to it.</summary>
internal static class PowersOfTen
{
    // 10^22 is the largest power of ten that is a double itself; a quotient of two exact numbers rounds once.
    private static readonly double[] Exact =
        [1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18, 1e19, 1e20, 1e21, 1e22];

    /// <summary>10 to an exponent from -22 to 22.</summary>
    public static double Of(int exponent) => exponent < 0 ? 1 / Exact[-exponent] : Exact[exponent];

    /// <summary>A number times a power of ten, rounded once.</summary>
    public static double Scale(double value, int exponent) => exponent < 0 ? value / Exact[-exponent] : value * Exact[exponent];

    /// <summary>The exponent when <paramref name="factor"/> is a power of ten, else null.</summary>
    public static int? ExponentOf(double factor)
    {
        for (var exponent = -22; exponent <= 22; exponent++)
        {
            if (Of(exponent) == factor) return exponent;
        }

        return null;
    }
}
