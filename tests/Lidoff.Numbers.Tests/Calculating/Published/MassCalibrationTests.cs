using Lidoff.Numbers.Calculating;
using Lidoff.Numbers.Reals;
using Lidoff.Numbers.Spreads;

namespace Lidoff.Numbers.Tests.Calculating.Published;

/// <summary>JCGM 101:2008 clause 9.3: a weight compared with another in air. First order misses a third of the doubt.</summary>
public sealed class MassCalibrationTests
{
    private static readonly Uncertain[] Inputs =
    [
        Uncertain.Normal(100_000.000, 0.050), Uncertain.Normal(1.234, 0.020), Uncertain.Uniform(1.10, 1.30),
        Uncertain.Uniform(7000, 9000), Uncertain.Uniform(7950, 8050),
    ];

    [Fact]
    public void First_order_and_Monte_Carlo_both_match_table_6_and_are_said_to_part()
    {
        var value = new Mass().Run(Inputs, samples: 1_000_000);
        Assert.Equal(1.2340, value.Value, 1e-7);
        Assert.Equal(0.0539, value.FirstOrderU, 0.00005);
        Assert.Equal(1.2341, value.Mean, 0.0003);
        Assert.Equal(0.0754, value.U, 0.0003);
        Assert.True(value.Parted);

        // Printed 1.0834 to 1.3825; the flat top lets the ends wander by about a thousandth.
        var shortest = MonteCarlo.Run(new Mass(), Inputs, 1, 1_000_000, null, 1).Shortest(0.95);
        Assert.Equal(1.0834, shortest.Low, 0.003);
        Assert.Equal(1.3825, shortest.High, 0.003);
    }

    public sealed class Mass : Calculation<Mass>, IFormula
    {
        public override CalculationInfo Info { get; } = TestInfo.Of("JCGM 101:2008, 9.3", "m_rc", "dm_rc", "rho_a", "rho_w", "rho_r");

        public static T Evaluate<T>(ReadOnlySpan<T> x) where T : struct, IReal<T> =>
            ((x[0] + x[1]) * (1.0 + ((x[2] - 1.2) * ((1.0 / x[3]) - (1.0 / x[4]))))) - 100_000.0;
    }
}
