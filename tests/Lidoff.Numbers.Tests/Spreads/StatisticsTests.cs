using Lidoff.Numbers.Spreads;

namespace Lidoff.Numbers.Tests.Spreads;

/// <summary>NIST Statistical Reference Datasets, univariate summary: the four sets NumAcc1 to 4, whose data are a rule.</summary>
public sealed class StatisticsTests
{
    [Fact]
    public void NumAcc1_is_exact()
    {
        double[] data = [10000001, 10000003, 10000002];
        Assert.Equal(10000002, Statistics.Mean(data));
        Assert.Equal(1, Statistics.StandardDeviation(data));
    }

    // Certified standard deviation 0.1. The larger the numbers, the fewer of their digits a double holds: 1.2e-10 of 1000000.2 and
    // 1.9e-9 of 10000000.2 are lost in writing them down, which is all the error allowed here.
    [Theory]
    [InlineData(1.2, 1.1, 1.3, 1e-15, 1e-14)]
    [InlineData(1000000.2, 1000000.1, 1000000.3, 1.2e-10, 1e-9)]
    [InlineData(10000000.2, 10000000.1, 10000000.3, 1.9e-9, 1e-8)]
    public void NumAcc2_to_4_give_the_certified_values(double first, double low, double high, double meanTolerance, double tolerance)
    {
        double[] data = [first, .. Enumerable.Range(0, 1000).Select(i => i % 2 == 0 ? low : high)];
        Assert.Equal(first, Statistics.Mean(data), meanTolerance);
        Assert.Equal(0.1, Statistics.StandardDeviation(data), tolerance);
    }

    // The middle value by its definition (ISO 3534-1, 2.13): of an even number the mean of the two in the middle; one wild reading moves nothing.
    [Theory]
    [InlineData(new double[] { 7 }, 7)]
    [InlineData(new double[] { 9, 1, 5 }, 5)]
    [InlineData(new double[] { 4, 1, 3, 2 }, 2.5)]
    [InlineData(new double[] { 1, 2, 3, 4, 1e300 }, 3)]
    public void The_median_is_the_middle_value(double[] values, double middle) => Assert.Equal(middle, Statistics.Median(values));

    [Fact]
    public void Of_nothing_there_is_no_median() => Assert.Throws<ArgumentException>(() => Statistics.Median([]));

    [Fact]
    public void Tree_sum_and_ordered_sum_agree_on_a_million_tenths()
    {
        var tenths = Enumerable.Repeat(0.1, 1_000_003).ToArray();

        // 0.1 as a double is 0.1000000000000000055511151231257827; times 1,000,003.
        Assert.Equal(100000.30000000000555, Statistics.Sum(tenths), 1e-11);
        Assert.Equal(100000.30000000000555, FixedTreeSum.Of(tenths), 1e-9);
    }

    [Fact]
    public void Small_numbers_survive_beside_large_ones() => Assert.Equal(2, Statistics.Sum([1, 1e100, 1, -1e100]));
}
