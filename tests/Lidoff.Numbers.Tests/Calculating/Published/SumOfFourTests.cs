using Lidoff.Numbers.Calculating;
using Lidoff.Numbers.Reals;
using Lidoff.Numbers.Spreads;

namespace Lidoff.Numbers.Tests.Calculating.Published;

/// <summary>JCGM 101:2008 clause 9.2: the sum of four quantities.</summary>
public sealed class SumOfFourTests
{
    private static readonly double HalfOfUnit = Math.Sqrt(3);

    [Fact]
    public void Four_normal_inputs_give_2_and_an_interval_of_3_92()
    {
        // 9.2.2, table 2: u 2.00, shortest 95 % interval ± 3.92.
        var inputs = Enumerable.Range(0, 4).Select(_ => Uncertain.Normal(0, 1)).ToArray();
        Check(inputs, 2.0, 3.92, 0.02, 2.0);
    }

    [Fact]
    public void Four_uniform_inputs_give_2_and_an_interval_of_3_88_instead_of_3_92()
    {
        // 9.2.3, table 3; the exact half-width is 2√3(2 − (3/5)^¼) = 3.8794.
        var inputs = Enumerable.Range(0, 4).Select(_ => Uncertain.Uniform(-HalfOfUnit, HalfOfUnit)).ToArray();
        Check(inputs, 2.0, 3.8794, 0.02, 2.0);
    }

    [Fact]
    public void One_dominating_uniform_input_gives_10_1_and_an_interval_of_17_0()
    {
        // 9.2.4, table 4: u 10.1, Monte Carlo ± 17.0 (the first-order normal interval would be ± 19.9).
        Uncertain[] inputs =
        [
            Uncertain.Uniform(-HalfOfUnit, HalfOfUnit), Uncertain.Uniform(-HalfOfUnit, HalfOfUnit),
            Uncertain.Uniform(-HalfOfUnit, HalfOfUnit), Uncertain.Uniform(-10 * HalfOfUnit, 10 * HalfOfUnit),
        ];
        Check(inputs, Math.Sqrt(103), 17.0, 0.06, 10.149);
    }

    private static void Check(Uncertain[] inputs, double u, double half, double tolerance, double firstOrder)
    {
        var value = new Sum().Run(inputs, samples: 1_000_000);
        Assert.Equal(0, value.Value, 1e-12);
        Assert.Equal(u, value.U, 0.005 * u);
        Assert.Equal(firstOrder, value.FirstOrderU, 0.001);
        Assert.False(value.Parted);
        var shortest = MonteCarlo.Run(new Sum(), inputs, 1, 1_000_000, null, 1).Shortest(0.95);
        Assert.Equal(2 * half, shortest.Width, 2 * tolerance);
    }

    public sealed class Sum : Calculation<Sum>, IFormula
    {
        public override CalculationInfo Info { get; } = TestInfo.Of("JCGM 101:2008, 9.2", "x1", "x2", "x3", "x4");

        public static T Evaluate<T>(ReadOnlySpan<T> x) where T : struct, IReal<T> => x[0] + x[1] + x[2] + x[3];
    }
}
