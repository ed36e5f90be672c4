using Lidoff.Numbers.Spreads;

namespace Lidoff.Numbers.Tests.Spreads;

public sealed class WelchSatterthwaiteTests
{
    [Fact]
    public void Two_parts_give_12_8()
    {
        // 0.57 with 9 degrees of freedom and 0.25 with endless ones: ν = 12.8 (NIST course example, recomputed 12.7956).
        Assert.Equal(12.7956, WelchSatterthwaite.Effective([(0.57, 9), (0.25, double.PositiveInfinity)]), 0.0001);
    }

    // JCGM 100:2008, G.4.2: 25 % relative doubt stand for 8 degrees of freedom; H.1.6 uses 10 % (50) and 50 % (2).
    [Theory]
    [InlineData(0.10, 50)]
    [InlineData(0.25, 8)]
    [InlineData(0.50, 2)]
    public void Doubt_of_an_uncertainty_gives_the_degrees_of_freedom_of_the_GUM(double share, double dof) =>
        Assert.Equal(dof, WelchSatterthwaite.DofOfDoubt(share), 1e-9);

    [Fact]
    public void Nothing_uncertain_has_endless_degrees_of_freedom() =>
        Assert.Equal(double.PositiveInfinity, WelchSatterthwaite.Effective([(0, 4), (0, 9)]));
}
