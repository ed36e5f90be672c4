using System.Runtime.InteropServices;
using System.Security.Cryptography;
using Lidoff.Numbers.Calculating;
using Lidoff.Numbers.Reals;
using Lidoff.Numbers.Spreads;
using Lidoff.Numbers.Tests.Calculating.Published;
using Lidoff.Numbers.Tests.Reals;

namespace Lidoff.Numbers.Tests.Golden;

/// <summary>A fixed run through elementary functions, sampler, shapes, sums and Monte Carlo, as one hash of all its bits.</summary>
public static class GoldenRun
{
    private const int Count = 2048;

    public static string Hash(int threads)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        Elementaries(hash);
        Shapes(hash);
        Runs(hash, threads);
        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    private static void Elementaries(IncrementalHash hash)
    {
        double[] u = new double[Count], v = new double[Count], lanes = new double[Count];
        var generator = new EightLanes(20261125);
        generator.Uniform(u);
        generator.Uniform(v);
        Func<double, double>[] functions =
        [
            x => Elementary.Exp((x - 0.5) * 1400), x => Elementary.Expm1((x - 0.5) * 4), x => Elementary.Log(x * 1000), x => Elementary.Log1p(x - 0.9),
            x => Elementary.Log2(x), x => Elementary.Log10(x), x => Elementary.Sin((x - 0.5) * 1e4), x => Elementary.Cos((x - 0.5) * 1e4),
            x => Elementary.Tan(x * 3), x => Elementary.Atan(x * 9), x => Elementary.Asin(x), x => Elementary.Acos(x), x => Elementary.Sinh(x * 5),
            x => Elementary.Cosh(x * 5), x => Elementary.Tanh(x * 2), x => Elementary.Cbrt(x * 1e9), x => Elementary.LogGamma(x * 20),
            NormalDistribution.Quantile, x => NormalDistribution.Cdf((x - 0.5) * 12),
        ];
        foreach (var function in functions) Add(hash, [.. u.Select(function)]);
        Add(hash, [.. u.Zip(v, (x, y) => Elementary.Pow(x * 10, (y - 0.5) * 100))]);
        Add(hash, [.. u.Zip(v, (x, y) => Elementary.Atan2(x - 0.5, y - 0.5))]);
        Add(hash, [.. u.Take(64).Zip(v, (x, y) => StudentT.Quantile(x, 0.5 + (y * 30)))]);
        for (var i = 0; i < Count; i += Lanes.Count)
        {
            Lanes x = Lanes.Load(u, i), y = Lanes.Load(v, i);
            (Lanes.Exp(x * 9.0) + Lanes.Log(y) + Lanes.Sin(x * 99.0) + Lanes.Cos(y) + Lanes.Pow(x, y * 9.0) + NormalDistribution.QuantileOf(y)).Store(lanes, i);
        }

        Add(hash, lanes);
        Add(hash, [FixedTreeSum.Of(lanes), FixedTreeSum.OfSquares(lanes.AsSpan(0, 1999), 3), Statistics.Sum(lanes), Statistics.StandardDeviation(lanes)]);
    }

    private static void Shapes(IncrementalHash hash)
    {
        double[] u = new double[Count], v = new double[Count], drawn = new double[Count];
        var generator = new EightLanes(7, 3);
        generator.Uniform(u);
        generator.Uniform(v);
        Uncertain[] shapes =
        [
            Uncertain.Normal(1, 2), Uncertain.Uniform(1, 2), Uncertain.Triangular(1, 2, 5), Uncertain.Arcsine(-1, 1), Uncertain.StudentT(1, 2, 5),
            Uncertain.CurvilinearTrapezoid(0, 2, 0.5), Uncertain.Empirical([3, 1, 2]),
        ];
        foreach (var shape in shapes)
        {
            shape.Shape.Draw(u, v, drawn);
            Add(hash, drawn);
        }
    }

    private static void Runs(IncrementalHash hash, int threads)
    {
        Add(hash, new EndGauge().Run(EndGauge.Inputs, 3, 20_000, threads: threads));
        Uncertain[] inputs = [.. Enumerable.Range(0, 10).Select(i => Uncertain.Uniform(0.5 + (0.1 * i), 1 + (0.1 * i), i < 2 ? "one source" : ""))];
        inputs[4] = Uncertain.Mixture("U1", [1, 2], [Uncertain.Normal(1, 0.1), Uncertain.StudentT(2, 0.1, 4)]);
        var correlations = CorrelationMatrix.Of(10, [(5, 6, 0.5), (6, 7, -0.25)]).Value;
        Add(hash, new GradientTests.Everything().Run(inputs, 4, 20_000, correlations, threads));
    }

    private static void Add(IncrementalHash hash, CalculationValue value) => Add(hash,
    [
        value.Value, value.U, value.FirstOrderU, value.Mean, value.Median, value.Interval90.Low, value.Interval90.High, value.Dof, value.Skipped,
        .. value.Slopes, .. value.Shares.Select(s => s.Share),
    ]);

    // The bits of a NaN are the one thing that hardware may choose; none may be in the run.
    private static void Add(IncrementalHash hash, ReadOnlySpan<double> values)
    {
        foreach (var value in values) Assert.False(double.IsNaN(value));
        hash.AppendData(MemoryMarshal.AsBytes(values));
    }
}
