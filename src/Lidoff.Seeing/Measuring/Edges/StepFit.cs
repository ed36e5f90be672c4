using Lidoff.Numbers;
using Lidoff.Numbers.Spreads;

namespace Lidoff.Seeing.Measuring.Edges;

/// <summary>
/// Fits a blurred step to a profile across an edge, low + step · Φ((d − place)/σ): what a lens and a sensor make of an edge (the edge spread
/// function of ISO 12233, taken as normal).
/// </summary>
internal static class StepFit
{
    private const int Fine = 64;
    private const double End = 5;
    private static readonly float[] Normal = [.. Enumerable.Range(0, (int)(2 * End * Fine) + 2).Select(i => (float)NormalDistribution.Cdf((i / (double)Fine) - End))];

    private const int Tabled = 4;

    /// <summary>A value of the file as light, both 0 to 255, where the tone curve between them has an exponent.</summary>
    public static float[] ToLight(double exponent) => [.. Enumerable.Range(0, (255 * Tabled) + 2).Select(i => (float)(255 * Elementary.Pow(Math.Max(i, 0.5) / (255 * Tabled), exponent)))];

    /// <summary>Reads such a table between its values.</summary>
    public static float Read(float[] table, float value)
    {
        var at = Math.Clamp(value, 0, 255) * Tabled;
        var i = (int)at;
        return table[i] + ((at - i) * (table[i + 1] - table[i]));
    }

    /// <summary>The best place within reach for a given σ, or null where nothing steps.</summary>
    /// <param name="profile">Values at equal steps.</param>
    /// <param name="first">Offset of the first value, px.</param>
    /// <param name="step">Steps, px.</param>
    /// <param name="low">Lowest offset that counts, px.</param>
    /// <param name="high">Highest.</param>
    /// <param name="sigma">Blur, px.</param>
    /// <param name="reach">The place is looked for this far from zero, px.</param>
    public static (double Place, double Step, double Misfit)? To(ReadOnlySpan<float> profile, double first, double step, double low, double high, double sigma, double reach)
    {
        var (from, to) = (Math.Max(0, (int)Math.Ceiling((low - first) / step)), Math.Min(profile.Length - 1, (int)Math.Floor((high - first) / step)));
        if (to - from < 4) return null;
        const double grid = 0.25;
        var (best, at, size) = (double.PositiveInfinity, 0.0, 0.0);
        for (var place = -reach; place <= reach; place += grid)
        {
            var (rest, height) = Rest(profile, first, step, from, to, place, sigma);
            if (rest < best) (best, at, size) = (rest, place, height);
        }

        // A place at the rim of the reach belongs to something else.
        if (Math.Abs(at) > reach - grid) return null;
        var width = grid;
        for (var round = 0; round < 5; round++, width /= 4)
        {
            // The rest is close to a parabola around its least value.
            var (before, _) = Rest(profile, first, step, from, to, at - width, sigma);
            var (here, _) = Rest(profile, first, step, from, to, at, sigma);
            var (after, _) = Rest(profile, first, step, from, to, at + width, sigma);
            var bend = before - (2 * here) + after;
            if (!(bend > 0)) break;
            at += Math.Clamp(0.5 * (before - after) / bend, -1, 1) * width;
        }

        (best, size) = Rest(profile, first, step, from, to, at, sigma);
        return (at, size, Math.Sqrt(best / Math.Max(1, to - from - 2)));
    }

    private static (double Misfit, double Step) Rest(ReadOnlySpan<float> profile, double first, double step, int from, int to, double place, double sigma)
    {
        var (n, sp, spp, sv, svv, spv) = (0, 0.0, 0.0, 0.0, 0.0, 0.0);
        for (var i = from; i <= to; i++)
        {
            var (p, v) = (Share((first + (i * step) - place) / sigma), (double)profile[i]);
            n++;
            sp += p;
            spp += p * p;
            sv += v;
            svv += v * v;
            spv += p * v;
        }

        var spread = spp - (sp * sp / n);
        if (spread < 1e-6) return (svv - (sv * sv / n), 0);
        var together = spv - (sp * sv / n);
        return (Math.Max(0, svv - (sv * sv / n) - (together * together / spread)), together / spread);
    }

    private static double Share(double z)
    {
        if (z <= -End) return 0;
        if (z >= End) return 1;
        var at = (z + End) * Fine;
        var i = (int)at;
        return Normal[i] + ((at - i) * (Normal[i + 1] - Normal[i]));
    }
}
