using Lidoff.Numbers.Spreads;

namespace Lidoff.Numbers.Tests.Spreads;

public sealed class IntervalTests
{
    [Fact]
    public void Wilson_interval_of_81_in_263_matches_the_published_example()
    {
        // R. G. Newcombe, Statistics in Medicine 17 (1998) 857, table I, method 3 (from memory): 81/263 → 0.2553 to 0.3662.
        var interval = WilsonInterval.Of(81, 263);
        Assert.Equal(0.2553, interval.Low, 0.00005);
        Assert.Equal(0.3662, interval.High, 0.00005);
    }

    [Fact]
    public void Wilson_interval_of_no_hits_in_20_matches_the_published_example()
    {
        // Same table: 0/20 → 0.0000 to 0.1611.
        var interval = WilsonInterval.Of(0, 20);
        Assert.Equal(0, interval.Low);
        Assert.Equal(0.1611, interval.High, 0.00005);
    }

    [Fact]
    public void Shortest_interval_leaves_out_the_long_tail()
    {
        double[] sorted = [0, 1, 2, 3, 4, 5, 6, 7, 8, 100];
        Assert.Equal(new Interval(0, 8), Coverage.Shortest(sorted, 0.8));
        Assert.True(Coverage.EqualTailed(sorted, 0.8).High > 8);
    }

    [Fact]
    public void Shared_term_does_not_shrink_with_more_readings()
    {
        var readings = Enumerable.Repeat((10.0, 0.1), 100).ToArray();
        var mean = WeightedMean.Of(readings, sharedU: 0.05);
        Assert.Equal(10, mean.Value, 1e-12);
        Assert.Equal(0.01, mean.OwnU, 1e-12);
        Assert.Equal(Math.Sqrt((0.01 * 0.01) + (0.05 * 0.05)), mean.U, 1e-12);
    }
}
