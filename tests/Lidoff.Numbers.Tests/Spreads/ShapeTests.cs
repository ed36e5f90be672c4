using Lidoff.Numbers.Spreads;

namespace Lidoff.Numbers.Tests.Spreads;

public sealed class ShapeTests
{
    // JCGM 100:2008 4.3.7 and 4.3.9 and JCGM 101 6.4: half-width over √3, √6, √2; curvilinear trapezoid (width²/12 + d²/9)½.
    [Fact]
    public void Standard_uncertainties_follow_the_divisors_of_the_GUM()
    {
        Assert.Equal(0.57735, Uncertain.Uniform(-1, 1).U, 0.000005);
        Assert.Equal(0.40825, Uncertain.Triangular(-1, 0, 1).U, 0.000005);
        Assert.Equal(0.70711, Uncertain.Arcsine(-1, 1).U, 0.000005);
        Assert.Equal(Math.Sqrt((4.0 / 12) + (0.25 / 9)), Uncertain.CurvilinearTrapezoid(-1, 1, 0.5).U, 1e-12);
    }

    public static TheoryData<string, Uncertain, double> All => new()
    {
        { "normal", Uncertain.Normal(3, 0.5), 0.5 },
        { "uniform", Uncertain.Uniform(1, 2), 1 / Math.Sqrt(12) },
        { "triangular", Uncertain.Triangular(1, 1.5, 4), Uncertain.Triangular(1, 1.5, 4).U },
        { "triangular, mode at an end", Uncertain.Triangular(1, 1, 4), 3 / Math.Sqrt(18) },
        { "arcsine", Uncertain.Arcsine(-2, 4), 3 / Math.Sqrt(2) },

        // Variance of Student's t is ν/(ν − 2) of its scale.
        { "student", Uncertain.StudentT(1, 2, 10), 2 * Math.Sqrt(10.0 / 8) },
        { "curvilinear trapezoid", Uncertain.CurvilinearTrapezoid(0, 2, 0.6), Math.Sqrt((4.0 / 12) + (0.36 / 9)) },
        { "empirical", Uncertain.Empirical([1, 2, 3, 4, 5, 6]), Math.Sqrt(35.0 / 12) },
    };

    [Theory]
    [MemberData(nameof(All))]
    public void Draws_have_the_mean_and_spread_of_their_shape(string name, Uncertain uncertain, double spread)
    {
        const int count = 1 << 18;
        double[] first = new double[count], second = new double[count], drawn = new double[count];
        var generator = new EightLanes(7);
        generator.Uniform(first);
        generator.Uniform(second);
        uncertain.Shape.Draw(first, second, drawn);

        // Five standard errors of the mean; half a per cent of the spread.
        Assert.True(Math.Abs(Statistics.Mean(drawn) - uncertain.Value) < 5 * spread / Math.Sqrt(count), name);
        Assert.Equal(spread, Statistics.StandardDeviation(drawn), 0.006 * spread);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Quantile_splits_the_draws_as_it_says(string name, Uncertain uncertain, double spread)
    {
        Assert.True(spread > 0, name);
        const int count = 1 << 17;
        double[] first = new double[count], second = new double[count], drawn = new double[count];
        var generator = new EightLanes(11);
        generator.Uniform(first);
        generator.Uniform(second);
        uncertain.Shape.Draw(first, second, drawn);
        foreach (var p in new[] { 0.05, 0.3, 0.5, 0.8, 0.97 })
        {
            // An empirical shape jumps: what lies strictly below is at most p, what lies at or below is at least p.
            var limit = uncertain.Shape.Quantile(p);
            var slack = 5 * Math.Sqrt(p * (1 - p) / count);
            Assert.True(drawn.Count(d => d < limit) / (double)count <= p + slack, $"{name} below {p}");
            Assert.True(drawn.Count(d => d <= limit) / (double)count >= p - slack, $"{name} up to {p}");
        }
    }
}
