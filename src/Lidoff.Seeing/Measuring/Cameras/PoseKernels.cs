using Lidoff.Numbers;

namespace Lidoff.Seeing.Measuring.Cameras;

/// <summary>Many narrow normal distributions that together have the shape of a bent cloud of poses, to draw from and to know how densely.</summary>
internal sealed class PoseKernels
{
    // Two to the so many kernels.
    private const int Halvings = 6;

    // Fewer poses have no shape.
    private const int Least = 12;

    private readonly List<PoseMode> kernels = [];

    private PoseKernels()
    {
    }

    /// <summary>The cloud is halved again and again along its widest number, and each part is one of them.</summary>
    /// <param name="values">Coefficients of the poses.</param>
    /// <param name="own">Width of a kernel that never is undercut, for each coefficient.</param>
    public static PoseKernels Of(IReadOnlyList<double[]> values, double[] own)
    {
        var kernels = new PoseKernels();
        kernels.Halve([.. values], own, Halvings);
        return kernels;
    }

    /// <summary>A pose of the mixture: of so many draws, every kernel gets a run.</summary>
    public double[] Draw(int at, int of, double[] point) => kernels[(int)((long)at * kernels.Count / of)].Draw(point);

    /// <summary>Logarithm of the mixture's density, up to the constant that all normal densities of this dimension share.</summary>
    public double LogDensity(double[] pose)
    {
        Span<double> logs = stackalloc double[kernels.Count];
        var top = double.NegativeInfinity;
        for (var k = 0; k < logs.Length; k++) top = Math.Max(top, logs[k] = kernels[k].LogDensity(pose));
        var sum = 0.0;
        // Below e to the −30 of the largest, all of them change no digit that counts.
        foreach (var log in logs) if (log > top - 30) sum += Elementary.Exp(log - top);
        return top + Elementary.Log(sum / logs.Length);
    }

    private void Halve(double[][] part, double[] own, int left)
    {
        var (mean, covariance) = Moments(part);
        if (left > 0 && part.Length > 2 * Least)
        {
            var widest = Enumerable.Range(0, own.Length).MaxBy(j => covariance[j, j] / (own[j] * own[j]));
            double[] keys = [.. part.Select(values => values[widest])];
            Array.Sort(keys, part);
            Halve(part[..(part.Length / 2)], own, left - 1);
            Halve(part[(part.Length / 2)..], own, left - 1);
            return;
        }

        for (var j = 0; j < own.Length; j++) covariance[j, j] += own[j] * own[j];
        if (PositiveMatrix.Factor(covariance) is { } factor && PositiveMatrix.Factor(PositiveMatrix.Inverse(factor)) is { } information) kernels.Add(new(mean, information, 0));
    }

    private static (double[] Mean, double[,] Covariance) Moments(double[][] part)
    {
        const int n = CameraPose.Count;
        var (mean, covariance) = (new double[n], new double[n, n]);
        foreach (var values in part) for (var j = 0; j < n; j++) mean[j] += values[j] / part.Length;
        foreach (var values in part)
        {
            for (var j = 0; j < n; j++) for (var k = 0; k < n; k++) covariance[j, k] += (values[j] - mean[j]) * (values[k] - mean[k]) / part.Length;
        }

        return (mean, covariance);
    }
}
