using Lidoff.Numbers.Spreads;

namespace Lidoff.Numbers.Tests.Spreads;

public sealed class EightLanesTests
{
    [Fact]
    public void Stream_does_not_depend_on_how_it_is_asked_for()
    {
        ulong[] whole = new ulong[64], parts = new ulong[64];
        new EightLanes(9, 4).Bits(whole);
        var generator = new EightLanes(9, 4);
        generator.Bits(parts.AsSpan(0, 24));
        generator.Bits(parts.AsSpan(24, 40));
        Assert.Equal(whole, parts);
    }

    [Fact]
    public void Seeds_and_blocks_give_different_streams()
    {
        var seen = new HashSet<ulong>();
        for (ulong seed = 0; seed < 8; seed++)
            for (ulong block = 0; block < 8; block++)
            {
                var bits = new ulong[32];
                new EightLanes(seed, block).Bits(bits);
                foreach (var number in bits) Assert.True(seen.Add(number));
            }
    }

    [Fact]
    public void Uniforms_fill_their_bins_evenly_and_do_not_repeat_their_neighbours()
    {
        const int count = 1 << 20, bins = 256;
        var u = new double[count];
        new EightLanes(2024).Uniform(u);
        Assert.All(u, value => Assert.InRange(value, double.Epsilon, 1 - 1e-16));
        var hits = new int[bins];
        foreach (var value in u) hits[(int)(value * bins)]++;
        var expected = count / (double)bins;

        // Chi-square with 255 degrees of freedom: 0.1 % above 330.5 and below 190.9.
        Assert.InRange(hits.Sum(h => (h - expected) * (h - expected) / expected), 185, 335);

        // Neighbours in a lane and between lanes: a correlation of independent numbers has spread 1/√n.
        foreach (var lag in new[] { 1, 7, 8, 9, 16 })
            Assert.InRange(Statistics.Correlation(u.AsSpan(0, count - lag), u.AsSpan(lag)), -4.5 / 1024, 4.5 / 1024);
    }

    // Blackman and Vigna's xoshiro256plusplus.c and splitmix64.c, followed by hand in python (eight_lanes.py) for seed 1, block 0.
    [Fact]
    public void First_numbers_are_those_of_an_independent_writing_of_the_published_algorithm()
    {
        var expected = File.ReadLines(Path.Combine(AppContext.BaseDirectory, "reference", "eight_lanes.csv")).Skip(1).Select(ulong.Parse).ToArray();
        var bits = new ulong[expected.Length];
        new EightLanes(1).Bits(bits);
        Assert.Equal(expected, bits);
    }
}
