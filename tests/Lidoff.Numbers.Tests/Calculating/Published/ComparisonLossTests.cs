using Lidoff.Numbers.Calculating;
using Lidoff.Numbers.Reals;
using Lidoff.Numbers.Spreads;

namespace Lidoff.Numbers.Tests.Calculating.Published;

/// <summary>
/// JCGM 101:2008 clause 9.4: comparison loss x1² + x2² of a power meter near zero, u = 0.005 each. First order says nothing at all at
/// zero. Expected values are the exact ones (mean x1² + 2u², variance 4x1²u² + 4u⁴(1 + r²)), which the tables there round.
/// </summary>
public sealed class ComparisonLossTests
{
    [Theory]
    [InlineData(0.0, 0.0, 0, 50e-6, 50.000e-6)]
    [InlineData(0.010, 0.0, 100e-6, 150e-6, 111.803e-6)]
    [InlineData(0.050, 0.0, 500e-6, 2550e-6, 502.494e-6)]
    [InlineData(0.0, 0.9, 0, 50e-6, 67.268e-6)]
    [InlineData(0.010, 0.9, 100e-6, 150e-6, 120.520e-6)]
    [InlineData(0.050, 0.9, 500e-6, 2550e-6, 504.505e-6)]
    public void Monte_Carlo_gives_the_exact_mean_and_spread(double x1, double r, double firstOrder, double mean, double u)
    {
        var correlations = r == 0 ? null : CorrelationMatrix.Of(2, [(0, 1, r)]).Value;
        var value = new Loss().Run([Uncertain.Normal(x1, 0.005), Uncertain.Normal(0, 0.005)], samples: 1_000_000, correlations: correlations);
        Assert.Equal(firstOrder, value.FirstOrderU, 1e-12);
        Assert.Equal(mean, value.Mean, 0.004 * u);
        Assert.Equal(u, value.U, 0.006 * u);

        // First order gives no doubt at zero, and a bias of half the doubt at 0.010; at 0.050 the two agree.
        Assert.Equal(x1 < 0.05, value.Parted);
    }

    [Theory]
    [InlineData(0.0, 0.0, 149.79e-6)]
    [InlineData(0.010, 0.0, 366.01e-6)]
    [InlineData(0.050, 1593.57e-6, 3548.57e-6)]
    public void The_shortest_interval_matches_the_noncentral_chi_square(double x1, double low, double high)
    {
        Uncertain[] inputs = [Uncertain.Normal(x1, 0.005), Uncertain.Normal(0, 0.005)];
        var shortest = MonteCarlo.Run(new Loss(), inputs, 1, 1_000_000, null, 1).Shortest(0.95);
        Assert.Equal(low, shortest.Low, x1 < 0.05 ? 0.2e-6 : 12e-6);
        Assert.Equal(high, shortest.High, x1 < 0.05 ? 1e-6 : 12e-6);
    }

    public sealed class Loss : Calculation<Loss>, IFormula
    {
        public override CalculationInfo Info { get; } = TestInfo.Of("JCGM 101:2008, 9.4", "x1", "x2");

        public static T Evaluate<T>(ReadOnlySpan<T> x) where T : struct, IReal<T> => (x[0] * x[0]) + (x[1] * x[1]);
    }
}
