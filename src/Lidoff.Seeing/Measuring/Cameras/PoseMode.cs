using Lidoff.Numbers;

namespace Lidoff.Seeing.Measuring.Cameras;

/// <summary>A pose that fits best in its surroundings, as the centre of a normal distribution to draw from.</summary>
internal sealed class PoseMode(double[] centre, double[,] factor, double misfit)
{
    // Drawn wider than the surroundings say, so that a bent valley is not missed.
    private const double Wider = 1.3;

    private readonly double logFactor = Enumerable.Range(0, centre.Length).Sum(i => Elementary.Log(factor[i, i] / Wider));

    /// <summary>The pose.</summary>
    public double[] Centre => centre;

    /// <summary>χ² there, priors included.</summary>
    public double Misfit => misfit;

    /// <summary>How far a pose lies from the centre, in standard deviations.</summary>
    public double Apart(double[] pose)
    {
        var sum = 0.0;
        for (var j = 0; j < pose.Length; j++)
        {
            var part = 0.0;
            for (var i = j; i < pose.Length; i++) part += factor[i, j] * (pose[i] - centre[i]);
            sum += part * part;
        }

        return Math.Sqrt(sum);
    }

    /// <summary>The pose that belongs to a point of the standard normal distribution.</summary>
    public double[] Draw(double[] point)
    {
        var n = point.Length;
        var drawn = new double[n];
        for (var i = n - 1; i >= 0; i--)
        {
            var sum = Wider * point[i];
            for (var k = i + 1; k < n; k++) sum -= factor[k, i] * drawn[k];
            drawn[i] = sum / factor[i, i];
        }

        for (var i = 0; i < n; i++) drawn[i] += centre[i];
        return drawn;
    }

    /// <summary>Logarithm of the density of such draws, up to the constant that all normal densities of this dimension share.</summary>
    public double LogDensity(double[] pose)
    {
        var apart = Apart(pose) / Wider;
        return (-0.5 * apart * apart) + logFactor;
    }
}
