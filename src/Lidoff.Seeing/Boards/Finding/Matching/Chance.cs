using Lidoff.Numbers;

namespace Lidoff.Seeing.Boards.Finding.Matching;

/// <summary>What accident alone would give.</summary>
internal static class Chance
{
    /// <summary>Natural logarithm of the probability that a Poisson number of a mean is <paramref name="least"/> or more, above its mean.</summary>
    public static double LogTail(int least, double mean)
    {
        if (least <= 0 || mean <= 0) return least <= 0 ? 0 : double.NegativeInfinity;
        if (least <= mean) return 0;
        // The first term, and the rest as a series that falls: Σ meanⁱ k!/(k+i)!.
        var log = -mean + (least * Elementary.Log(mean));
        for (var i = 2; i <= least; i++) log -= Elementary.Log(i);
        var (sum, term) = (1.0, 1.0);
        for (var i = 1; i < 400 && term > 1e-12; i++) sum += term *= mean / (least + i);
        return Math.Min(0, log + Elementary.Log(sum));
    }

    /// <summary>Probability that of <paramref name="a"/> + <paramref name="b"/> tosses of a fair coin <paramref name="a"/> or more fall one way.</summary>
    public static double Sign(int a, int b)
    {
        var (n, sum, log) = (a + b, 0.0, 0.0);
        for (var k = n; k >= a; k--)
        {
            // C(n, k) from the top: C(n, n) = 1.
            sum += Elementary.Exp(log - (n * Elementary.Log(2)));
            if (k > 0) log += Elementary.Log(k) - Elementary.Log(n - k + 1);
        }

        return Math.Min(1, sum);
    }
}
