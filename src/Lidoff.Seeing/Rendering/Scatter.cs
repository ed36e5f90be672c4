namespace Lidoff.Seeing.Rendering;

/// <summary>Noise by place: the same seed and place give the same value whatever was drawn before.</summary>
internal static class Scatter
{
    /// <summary>Evenly between 0 and 1.</summary>
    public static double Even(int seed, int x, int y) => (Mix(seed, x, y) >> 11) * (1.0 / (1UL << 53));

    /// <summary>
    /// Nearly normal, mean 0, standard deviation 1: the sum of the four quarters of one word, each even, so that no elementary
    /// function is needed (variance of an even value 1/12, of four of them 1/3).
    /// </summary>
    public static double Normal(int seed, int x, int y)
    {
        var z = Mix(seed, x, y);
        var sum = (int)(z & 0xFFFF) + (int)((z >> 16) & 0xFFFF) + (int)((z >> 32) & 0xFFFF) + (int)(z >> 48);
        return ((sum * (1 / 65536.0)) - 2) * 1.7320508075688772;
    }

    /// <summary>Steele, Lea and Flood's splitmix64 finaliser over the packed place.</summary>
    private static ulong Mix(int seed, int x, int y)
    {
        var z = unchecked(((ulong)(uint)seed * 0x9E3779B97F4A7C15UL) + ((ulong)(uint)x << 32) + (uint)y + 0x9E3779B97F4A7C15UL);
        z = unchecked((z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL);
        z = unchecked((z ^ (z >> 27)) * 0x94D049BB133111EBUL);
        return z ^ (z >> 31);
    }
}
