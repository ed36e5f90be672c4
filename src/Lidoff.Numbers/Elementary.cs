#pragma warning disable RS0030
namespace Lidoff.Numbers;

/// <summary>Elementary functions (being replaced by fixed polynomials of ours).</summary>
public static class Elementary
{
    /// <summary>e to the x.</summary>
    public static double Exp(double x) => Math.Exp(x);

    /// <summary>Natural logarithm.</summary>
    public static double Log(double x) => Math.Log(x);

    /// <summary>Decimal logarithm.</summary>
    public static double Log10(double x) => Math.Log10(x);

    /// <summary>x to the y.</summary>
    public static double Pow(double x, double y) => Math.Pow(x, y);

    /// <summary>Sine of radians.</summary>
    public static double Sin(double x) => Math.Sin(x);

    /// <summary>Cosine of radians.</summary>
    public static double Cos(double x) => Math.Cos(x);

    /// <summary>Angle of the point (x, y), radians.</summary>
    public static double Atan2(double y, double x) => Math.Atan2(y, x);
}
