using Lidoff.Numbers;

namespace Lidoff.Seeing.Reading.Bands;

/// <summary>Red, green and blue in linear light, 1 for the white of sRGB.</summary>
public readonly record struct LinearRgb(double R, double G, double B)
{
    // Darker than that no camera tells.
    private const double Floor = 1e-4;

    /// <summary>Brightness by the weights of sRGB's primaries (IEC 61966-2-1).</summary>
    public double Y => (0.2126 * R) + (0.7152 * G) + (0.0722 * B);

    /// <summary>Each channel times a factor of its own.</summary>
    public LinearRgb Times(double r, double g, double b) => new(R * r, G * g, B * b);

    /// <summary>L*, a* and b* (CIE 15) for white D65.</summary>
    public (double L, double A, double B) Lab()
    {
        var (r, g, b) = (Math.Max(Floor, R), Math.Max(Floor, G), Math.Max(Floor, B));
        // Primaries and white of IEC 61966-2-1, X and Z over those of the white.
        var x = Root(((0.4124 * r) + (0.3576 * g) + (0.1805 * b)) / 0.9505);
        var y = Root((0.2126 * r) + (0.7152 * g) + (0.0722 * b));
        var z = Root(((0.0193 * r) + (0.1192 * g) + (0.9505 * b)) / 1.089);
        return ((116 * y) - 16, 500 * (x - y), 200 * (y - z));
    }

    /// <summary>An 8-bit step of sRGB in linear light.</summary>
    public static float OfStep(byte step) => Steps[step];

    // IEC 61966-2-1.
    private static readonly float[] Steps = [.. Enumerable.Range(0, 256).Select(i => i / 255.0).Select(v => (float)(v <= 0.04045 ? v / 12.92 : Elementary.Pow((v + 0.055) / 1.055, 2.4)))];

    private static double Root(double t) => t > 216.0 / 24389 ? Elementary.Pow(t, 1.0 / 3) : ((24389.0 / 27 * t) + 16) / 116;
}
