using Lidoff.Numbers.Calculating;
using Lidoff.Numbers.Quantities;
using Lidoff.Numbers.Reals;
using Lidoff.Numbers.Spreads;
using Lidoff.Numbers.Tests.Calculating.Published;
using Lidoff.Numbers.Tests.Reals;

namespace Lidoff.Numbers.Tests.Calculating;

/// <summary>Laws that hold for every calculation, and how shared sources, identities and ranges are kept.</summary>
public sealed class CalculationTests
{
    [Fact]
    public void Lanes_give_the_bits_of_the_scalar_and_a_permuted_sample_gives_the_permuted_values()
    {
        const int rows = 64;
        var everything = new GradientTests.Everything();
        double[] columns = new double[10 * rows], permuted = new double[10 * rows], values = new double[rows], others = new double[rows];
        new EightLanes(3).Uniform(columns);
        for (var i = 0; i < 10; i++)
            for (var row = 0; row < rows; row++) permuted[(i * rows) + (((row * 29) + 5) % rows)] = columns[(i * rows) + row];
        everything.Evaluate(columns, values);
        everything.Evaluate(permuted, others);
        for (var row = 0; row < rows; row++)
        {
            var inputs = Enumerable.Range(0, 10).Select(i => columns[(i * rows) + row]).ToArray();
            Assert.Equal(everything.Nominal(inputs), values[row]);
            Assert.Equal(values[row], others[((row * 29) + 5) % rows]);
        }
    }

    [Fact]
    public void One_two_and_three_threads_give_the_same_bits()
    {
        var one = new EndGauge().Run(EndGauge.Inputs, seed: 5, samples: 33_333);
        foreach (var threads in new[] { 2, 3 })
        {
            var more = new EndGauge().Run(EndGauge.Inputs, seed: 5, samples: 33_333, threads: threads);
            Assert.Equal((one.U, one.Mean, one.Median, one.Interval90), (more.U, more.Mean, more.Median, more.Interval90));
        }

        Assert.NotEqual(one.U, new EndGauge().Run(EndGauge.Inputs, seed: 6, samples: 33_333).U);
    }

    // A change of unit by a power of two moves no digit: everything scales exactly.
    [Fact]
    public void A_change_of_unit_leaves_the_answer()
    {
        Uncertain[] volts = [Uncertain.Normal(12, 0.3), Uncertain.Uniform(1, 2)];
        Uncertain[] scaled = [Uncertain.Normal(12 * 1024, 0.3 * 1024), Uncertain.Uniform(1024, 2048)];
        var plain = new Difference().Run(volts, samples: 10_000);
        var large = new Difference().Run(scaled, samples: 10_000);
        Assert.Equal(plain.Value * 1024, large.Value);
        Assert.Equal(plain.U * 1024, large.U);
        Assert.Equal(plain.Median * 1024, large.Median);
        Assert.Equal(plain.Shares, large.Shares);
    }

    [Fact]
    public void Inputs_of_one_source_rise_and_fall_together()
    {
        var apart = new Difference().Run([Uncertain.Normal(10, 1), Uncertain.Normal(4, 1)]);
        Assert.Equal(Math.Sqrt(2), apart.FirstOrderU, 1e-12);
        Assert.Equal(Math.Sqrt(2), apart.U, 0.02);

        var together = new Difference().Run([Uncertain.Normal(10, 1, "caliper"), Uncertain.Normal(4, 1, "caliper")]);
        Assert.Equal(0, together.FirstOrderU, 1e-12);
        Assert.Equal(0, together.U, 1e-12);
        Assert.Equal(6, together.Median, 1e-12);
    }

    [Fact]
    public void A_correlation_of_one_is_the_same_as_one_source()
    {
        var one = CorrelationMatrix.Of(2, [(0, 1, 1)]).Value;
        var value = new Difference().Run([Uncertain.Normal(10, 1), Uncertain.Uniform(3, 5)], correlations: one);
        var expected = new Difference().Run([Uncertain.Normal(10, 1, "s"), Uncertain.Uniform(3, 5, "s")]);
        Assert.Equal(expected.FirstOrderU, value.FirstOrderU, 1e-12);
        Assert.Equal(expected.U, value.U, 0.01);
    }

    [Fact]
    public void An_undecided_identity_is_drawn_once_for_all_its_inputs()
    {
        // Either a part of 3 ± 0.1 that draws 10 ± 0.1, or one of 5 ± 0.1 that draws 12 ± 0.1: the difference is 7 either way.
        double[] weights = [0.25, 0.75];
        var small = Uncertain.Mixture("U3", weights, [Uncertain.Normal(3, 0.1), Uncertain.Normal(5, 0.1)]);
        var large = Uncertain.Mixture("U3", weights, [Uncertain.Normal(10, 0.1), Uncertain.Normal(12, 0.1)]);
        Assert.Equal(4.5, small.Value, 1e-12);

        // Variance of a two-valued quantity w(1 − w)d² = 0.75, and 0.01 within.
        Assert.Equal(Math.Sqrt(0.76), small.U, 1e-12);
        var value = new Difference().Run([large, small]);
        Assert.Equal(7, value.Value, 1e-12);
        Assert.Equal(Math.Sqrt(0.02), value.FirstOrderU, 1e-12);
        Assert.Equal(Math.Sqrt(0.02), value.U, 0.002);

        var apart = new Difference().Run([large, Uncertain.Mixture("U4", weights, [Uncertain.Normal(3, 0.1), Uncertain.Normal(5, 0.1)])]);
        Assert.Equal(Math.Sqrt(1.52), apart.FirstOrderU, 1e-12);
        Assert.Equal(Math.Sqrt(1.52), apart.U, 0.02);
    }

    [Fact]
    public void Weights_of_one_identity_that_differ_are_a_programmers_mistake()
    {
        Uncertain[] alternatives = [Uncertain.Exact(1), Uncertain.Exact(2)];
        Assert.Throws<ArgumentException>(() => new Difference().Run(
            [Uncertain.Mixture("U3", [0.5, 0.5], alternatives), Uncertain.Mixture("U3", [0.4, 0.6], alternatives)]));
    }

    [Fact]
    public void Draws_outside_an_inputs_range_or_without_a_value_are_counted()
    {
        // Ranges are 0 to 100: half of a normal about zero is outside.
        var value = new Ranged().Run([Uncertain.Normal(0, 1)], samples: 100_000);
        Assert.InRange(value.Skipped, 49_000, 51_000);
        Assert.True(value.Interval90.Low >= 0);
        Assert.True(value.Parted);

        var never = new Ranged().Run([Uncertain.Uniform(-2, -1)], samples: 4096);
        Assert.Equal(4096, never.Skipped);
        Assert.Equal(double.NaN, never.U);
    }

    [Fact]
    public void Exact_inputs_give_an_exact_value()
    {
        var value = new Difference().Run([Uncertain.Exact(7), Uncertain.Exact(3)]);
        Assert.Equal((4.0, 0.0, 0.0, 4.0, 0), (value.Value, value.U, value.FirstOrderU, value.Median, value.Skipped));
        Assert.Equal(new Interval(4, 4), value.Interval90);
        Assert.All(value.Shares, s => Assert.Equal(0, s.Share));
        Assert.False(value.Parted);
    }

    [Fact]
    public void Correlations_that_cannot_all_hold_are_refused_with_a_sentence()
    {
        var impossible = CorrelationMatrix.Of(3, [(0, 1, 0.9), (1, 2, 0.9), (0, 2, -0.9)]);
        Assert.Equal(
            "These correlations cannot all be true at once: two inputs that both move with a third cannot move against each other that strongly.",
            Assert.Single(impossible.Faults).Say);

        var two = CorrelationMatrix.Of(2, [(0, 1, 1.5), (0, 0, 0.1)]);
        Assert.Equal(
            ["The correlation 1.5 between inputs 1 and 2 is not between -1 and 1.", "A correlation between inputs 1 and 1 is given, but it must join two different ones of the 2 inputs."],
            two.Faults.Select(f => f.Say));
    }

    public sealed class Difference : Calculation<Difference>, IFormula
    {
        public override CalculationInfo Info { get; } = TestInfo.Of("a − b", "a", "b");

        public static T Evaluate<T>(ReadOnlySpan<T> x) where T : struct, IReal<T> => x[0] - x[1];
    }

    public sealed class Ranged : Calculation<Ranged>, IFormula
    {
        public override CalculationInfo Info { get; } = new(
            "ranged", "One input, zero to a hundred.", Units.One, [new("x", Units.One, 0, 100, "x")], "none", Maturity.Experimental, []);

        public static T Evaluate<T>(ReadOnlySpan<T> x) where T : struct, IReal<T> => x[0] + 1.0;
    }
}
