using Lidoff.Evidence.Pictures;

namespace Lidoff.Demo;

/// <summary>A hand that clicks a little beside the point it means, and dice for the recorder: the same key gives the same everywhere.</summary>
internal static class DemoHand
{
    // Standard deviation of a click along each axis, px: a steady hand at a mouse.
    private const double ClickPx = 0.7;

    /// <summary>Where the hand clicks, to a tenth of a pixel, as JSON.</summary>
    public static string Clicked(PicturePoint point, string key) => FormattableString.Invariant(
        $"[{Math.Round(point.X + (ClickPx * Normal(key + " x")), 1)},{Math.Round(point.Y + (ClickPx * Normal(key + " y")), 1)}]");

    /// <summary>Nearly normal with mean 0 and deviation 1: the sum of four even ones (variance 1/12 each), for a key.</summary>
    public static double Normal(string key)
    {
        // The 64-bit hash of Fowler, Noll and Vo, variant 1a, then the finaliser of splitmix64 (Steele, Lea and Flood).
        var z = 14695981039346656037UL;
        foreach (var letter in key) z = unchecked((z ^ letter) * 1099511628211UL);
        return Normal(z);
    }

    /// <summary>The same for a numbered place.</summary>
    public static double Normal(ulong z)
    {
        z = unchecked((z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL);
        z = unchecked((z ^ (z >> 27)) * 0x94D049BB133111EBUL);
        z ^= z >> 31;
        var sum = (int)(z & 0xFFFF) + (int)((z >> 16) & 0xFFFF) + (int)((z >> 32) & 0xFFFF) + (int)(z >> 48);
        return ((sum / 65536.0) - 2) * 1.7320508075688772;
    }
}
