namespace Lidoff.Seeing.Rendering;

/// <summary>Noise by place: the same seed and place give the same value whatever was drawn before.</summary>
internal static class Scatter
{
    /// <summary>Evenly between 0 and 1.</summary>
    public static double Even(int seed, int x, int y)
    {
        // Steele, Lea and Flood's splitmix64 finaliser over the packed place.
        var z = unchecked(((ulong)(uint)seed * 0x9E3779B97F4A7C15UL) + ((ulong)(uint)x << 32) + (uint)y + 0x9E3779B97F4A7C15UL);
        z = unchecked((z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL);
        z = unchecked((z ^ (z >> 27)) * 0x94D049BB133111EBUL);
        return ((z ^ (z >> 31)) >> 11) * (1.0 / (1UL << 53));
    }

    /// <summary>Nearly normal, mean 0, standard deviation 1: the sum of four even ones, so no elementary function is needed.</summary>
    public static double Normal(int seed, int x, int y)
    {
        var sum = 0.0;
        for (var i = 0; i < 4; i++) sum += Even(seed + (i * 7919), x, y);
        return (sum - 2) * 1.7320508075688772;
    }
}
