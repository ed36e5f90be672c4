using Lidoff.Seeing.Measuring;

namespace Lidoff.Seeing.Tests.Measuring;

/// <summary>Quantiles of mixtures of normals, against the tables of the normal distribution and mixtures whose quantiles follow from them.</summary>
public sealed class NormalMixtureTests
{
    // Tables of the normal distribution (GUM table G.2 has 1.64(5) and 1.96; the quartile 0.6745 is the probable error).
    [Theory]
    [InlineData(0.05, -1.644854)]
    [InlineData(0.25, -0.674490)]
    [InlineData(0.5, 0)]
    [InlineData(0.75, 0.674490)]
    [InlineData(0.95, 1.644854)]
    [InlineData(0.975, 1.959964)]
    public void One_normal_has_the_quantiles_of_the_tables_at_every_share(double share, double z)
    {
        Assert.Equal(10 + (2 * z), NormalMixture.Quantile([(1, 10, 2)], share), 5);
        // The same one written as two halves of it goes the other way through the code.
        Assert.Equal(10 + (2 * z), NormalMixture.Quantile([(0.5, 10, 2), (0.5, 10, 2)], share), 5);
    }

    [Fact]
    public void Two_normals_far_apart_have_each_their_own_half()
    {
        // Below 0 lies half of all; a tenth of all is a fifth of the lower one: −0.841621 of its standard deviations (tables).
        (double, double, double)[] mixture = [(0.5, -100, 3), (0.5, 100, 1)];
        Assert.Equal(-100 - (3 * 0.841621), NormalMixture.Quantile(mixture, 0.1), 4);
        Assert.Equal(100 + 0.841621, NormalMixture.Quantile(mixture, 0.9), 4);
    }

    [Fact]
    public void Many_narrow_normals_side_by_side_are_a_rectangle()
    {
        // A thousand of them evenly from 0 to 1: a tenth lies below 0.1. Putting neighbours together moves nothing.
        var mixture = Enumerable.Range(0, 1000).Select(i => (1e-3, (i + 0.5) / 1000, 1e-4)).ToArray();
        foreach (var share in new[] { 0.05, 0.1, 0.5, 0.95 }) Assert.Equal(share, NormalMixture.Quantile(mixture, share), 1e-3);
    }
}
