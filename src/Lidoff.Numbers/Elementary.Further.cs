namespace Lidoff.Numbers;

/// <content>Hyperbolic functions, cube root and the logarithm of the gamma function, from the functions beside.</content>
public static partial class Elementary
{
    private const double LogRootTwoPi = 0.9189385332046728;

    /// <summary>Hyperbolic sine.</summary>
    public static double Sinh(double x)
    {
        if (Math.Abs(x) > 40) return Math.CopySign(Cosh(x), x);
        var e = Expm1(Math.Abs(x));
        return Math.CopySign(0.5 * (e + (e / (e + 1))), x);
    }

    /// <summary>Hyperbolic cosine.</summary>
    public static double Cosh(double x)
    {
        var size = Math.Abs(x);
        if (size > 709)
        {
            // e to the x is beyond a double before half of it is.
            var root = Exp(0.5 * size);
            return 0.5 * root * root;
        }

        var e = Exp(size);
        return (0.5 * e) + (0.5 / e);
    }

    /// <summary>Hyperbolic tangent.</summary>
    public static double Tanh(double x)
    {
        if (Math.Abs(x) > 20) return Math.CopySign(1, x);
        var e = Expm1(2 * Math.Abs(x));
        return Math.CopySign(e / (e + 2), x);
    }

    /// <summary>Cube root, of any sign.</summary>
    public static double Cbrt(double x)
    {
        if (x == 0 || !double.IsFinite(x)) return x;

        // One Newton step takes out what the rounding of 1/3 leaves in the power.
        double size = Math.Abs(x), root = Pow(size, 1.0 / 3);
        root -= (root - (size / root / root)) / 3;
        return Math.CopySign(root, x);
    }

    /// <summary>Natural logarithm of the gamma function, x above zero (else NaN).</summary>
    public static double LogGamma(double x)
    {
        if (!(x > 0)) return double.NaN;

        // Shifted up to where Stirling's series (NIST DLMF 5.11.1) holds to the last digit.
        double product = 1, y = x;
        while (y < 15)
        {
            product *= y;
            y += 1;
        }

        var z = 1 / (y * y);
        var series = -691.0 / 360360;
        foreach (var term in (ReadOnlySpan<double>)[1.0 / 1188, -1.0 / 1680, 1.0 / 1260, -1.0 / 360, 1.0 / 12])
            series = Math.FusedMultiplyAdd(series, z, term);
        return Math.FusedMultiplyAdd(y - 0.5, Log(y), -y) + LogRootTwoPi + (series / y) - Log(product);
    }
}
