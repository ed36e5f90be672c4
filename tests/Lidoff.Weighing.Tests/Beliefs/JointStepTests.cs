using CsCheck;
using Lidoff.Weighing.Beliefs;

namespace Lidoff.Weighing.Tests.Beliefs;

public class JointStepTests
{
    private static Variable Of(string id, params double[] p) => new(id, [.. p.Select((_, i) => "s" + i)], [.. p.Select(x => Math.Log(x))]);

    [Fact]
    public void Without_factors_a_local_belief_passes_through()
    {
        var belief = Assert.Single(JointStep.Run([Of("U1", 1, 3)], []));
        Assert.Equal(0.25, belief.P[0], 12);
        Assert.True(belief.Exact);
    }

    // Counted by hand: identity A or B (1:1), net G or N (1:1); the touch is seen with 0.9 when A and G go together, else 0.1.
    // Joint: AG .9, AN .1, BG .1, BN .1 over 1.2, so A = 10/12 and G = 10/12. Counting the touch for the part first and then again
    // through its pin-out would give A = .9*.1/(...) far above.
    [Theory]
    [InlineData(JointStep.CountedStates)]
    [InlineData(0)]
    public void A_touch_that_helped_name_a_part_counts_once_when_the_pinout_predicts_it(int counted)
    {
        var touch = new Table("touch", ["U3", "net"], s => Math.Log(s[0] == 0 && s[1] == 0 ? 0.9 : 0.1));
        var beliefs = JointStep.Run([Of("U3", 1, 1), Of("net", 1, 1)], [touch], counted);
        Assert.Equal(10.0 / 12, beliefs[0].P[0], 12);
        Assert.Equal(10.0 / 12, beliefs[1].P[0], 12);
    }

    // Prior 1/20 with likelihood ratios 8, 5, 0.5, 12 gives 0.926641 (decibans added by hand, checkbook §15).
    [Fact]
    public void Independent_lines_about_one_variable_add_up_in_decibans()
    {
        var factors = new[] { 8, 5, 0.5, 12 }.Select((ratio, i) => new Table("f" + i, ["U1"], s => s[0] == 0 ? Math.Log(ratio) : 0));
        var belief = JointStep.Run([Of("U1", 1, 19)], factors, 0)[0];
        Assert.Equal(0.926641, belief.P[0], 6);
    }

    [Fact]
    public void Messages_equal_counting_out_on_random_trees() => Case.Sample(
        c =>
        {
            var counted = JointStep.Run(c.Variables, c.Factors, int.MaxValue);
            var passed = JointStep.Run(c.Variables, c.Factors, 0);
            for (var v = 0; v < counted.Count; v++)
            {
                Assert.True(passed[v].Exact);
                for (var s = 0; s < counted[v].P.Count; s++) Assert.Equal(counted[v].P[s], passed[v].P[s], 9);
            }
        },
        iter: 200,
        seed: "0N0XIzNsQ0O2");

    [Fact]
    public void The_order_of_variables_and_factors_changes_no_bit() => Case.Sample(
        c =>
        {
            foreach (var counted in new[] { 0, int.MaxValue })
            {
                var one = JointStep.Run(c.Variables, c.Factors, counted);
                var other = JointStep.Run(c.Variables.Reverse(), c.Factors.Reverse(), counted);
                Assert.Equal(one.SelectMany(b => b.P), other.SelectMany(b => b.P));
            }
        },
        iter: 100,
        seed: "0N0XIzNsQ0O2");

    [Fact]
    public void A_loop_says_that_it_is_not_exact_when_too_large_to_count()
    {
        Table Same(string id, string a, string b) => new(id, [a, b], s => Math.Log(s[0] == s[1] ? 0.8 : 0.2));
        var variables = new[] { Of("a", 3, 1), Of("b", 1, 1), Of("c", 1, 1) };
        var loop = new[] { Same("1", "a", "b"), Same("2", "b", "c"), Same("3", "c", "a") };
        Assert.All(JointStep.Run(variables, loop, 0), b => Assert.False(b.Exact));
        Assert.All(JointStep.Run(variables, loop), b => Assert.True(b.Exact));
    }

    [Fact]
    public void A_state_that_is_ruled_out_stays_out()
    {
        var belief = JointStep.Run([Of("a", 0, 1), Of("b", 1, 1)], [new Table("f", ["a", "b"], s => Math.Log(s[0] == s[1] ? 0.99 : 0.01))], 0);
        Assert.Equal(0, belief[0].P[0]);
        Assert.Equal(0.99, belief[1].P[1], 12);
    }

    [Fact]
    public void A_factor_over_an_unknown_variable_is_a_programmers_mistake() =>
        Assert.Throws<ArgumentException>(() => JointStep.Run([Of("a", 1)], [new Table("f", ["a", "x"], _ => 0)]));

    /// <summary>A random tree: each variable after the first is tied to an earlier one by a random table.</summary>
    private static readonly Gen<(Variable[] Variables, ISharedFactor[] Factors)> Case =
        Gen.Select(Gen.Int[2, 5], Gen.Int[0, 1_000_000]).Select((count, seed) =>
        {
            var random = new Random(seed);
            var variables = Enumerable.Range(0, count).Select(i => Of("v" + i, [.. Enumerable.Range(0, random.Next(2, 4)).Select(_ => 0.05 + random.NextDouble())])).ToArray();
            var factors = Enumerable.Range(1, count - 1).Select(ISharedFactor (i) =>
            {
                var other = random.Next(i);
                var table = Enumerable.Range(0, 9).Select(_ => Math.Log(0.02 + random.NextDouble())).ToArray();
                return new Table("f" + i, ["v" + other, "v" + i], s => table[(s[0] * 3) + s[1]]);
            }).ToArray();
            return (variables, factors);
        });

    private sealed record Table(string Id, IReadOnlyList<string> Variables, Func<IReadOnlyList<int>, double> Log) : ISharedFactor
    {
        public double LogLikelihood(IReadOnlyList<int> states) => Log(states);
    }
}
