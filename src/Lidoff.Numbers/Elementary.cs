#pragma warning disable RS0030
namespace Lidoff.Numbers;

/// <summary>Elementary functions (being replaced by fixed polynomials of ours).</summary>
public static class Elementary
{
    /// <summary>e to the x.</summary>
    public static double Exp(double x) => Math.Exp(x);

    /// <summary>e to the x, less one, exact for small x.</summary>
    public static double Expm1(double x) => Math.Abs(x) > 0.5 ? Math.Exp(x) - 1 : 2 * Math.Sinh(x / 2) * Math.Exp(x / 2);

    /// <summary>Natural logarithm.</summary>
    public static double Log(double x) => Math.Log(x);

    /// <summary>Natural logarithm of 1 + x, exact for small x.</summary>
    public static double Log1p(double x)
    {
        var u = 1 + x;
        return u == 1 ? x : Math.Log(u) * x / (u - 1);
    }

    /// <summary>Decimal logarithm.</summary>
    public static double Log10(double x) => Math.Log10(x);

    /// <summary>x to the y.</summary>
    public static double Pow(double x, double y) => Math.Pow(x, y);

    /// <summary>Sine of radians.</summary>
    public static double Sin(double x) => Math.Sin(x);

    /// <summary>Cosine of radians.</summary>
    public static double Cos(double x) => Math.Cos(x);

    /// <summary>Tangent of radians.</summary>
    public static double Tan(double x) => Math.Tan(x);

    /// <summary>Angle of the point (x, y), radians.</summary>
    public static double Atan2(double y, double x) => Math.Atan2(y, x);

    /// <summary>Natural logarithm of the gamma function, x above zero.</summary>
    public static double LogGamma(double x)
    {
        // Shifted up to where Stirling's series (NIST DLMF 5.11.1) holds to the last digit.
        double product = 1, y = x;
        while (y < 15)
        {
            product *= y;
            y += 1;
        }

        var z = 1 / (y * y);
        var series = (1.0 / 12 - z * (1.0 / 360 - z * (1.0 / 1260 - z * (1.0 / 1680 - z * (1.0 / 1188 - z * (691.0 / 360360)))))) / y;
        return ((y - 0.5) * Log(y)) - y + 0.91893853320467274178 + series - Log(product);
    }
}
