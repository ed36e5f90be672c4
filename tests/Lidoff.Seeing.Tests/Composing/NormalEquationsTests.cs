using Lidoff.Seeing.Composing;

namespace Lidoff.Seeing.Tests.Composing;

/// <summary>Least squares against NIST's certified values and the thermometer of the GUM.</summary>
public sealed class NormalEquationsTests
{
    // NIST StRD, linear regression through the origin: NoInt1 (y = 130 … 140 at x = 60 … 70) and NoInt2 (y = 3, 4, 4 at x = 4, 5, 6).
    [Theory]
    [InlineData(new double[] { 60, 61, 62, 63, 64, 65, 66, 67, 68, 69, 70 }, new double[] { 130, 131, 132, 133, 134, 135, 136, 137, 138, 139, 140 }, 2.07438016528926)]
    [InlineData(new double[] { 4, 5, 6 }, new double[] { 3, 4, 4 }, 0.727272727272727)]
    public void A_line_through_the_origin_has_the_certified_slope(double[] x, double[] y, double slope)
    {
        var equations = new NormalEquations(1);
        for (var i = 0; i < x.Length; i++) equations.Add([(0, x[i])], y[i], 1);
        Assert.Equal(slope, equations.Solve()[0], 13);
    }

    [Fact]
    public void The_thermometer_of_the_GUM_has_its_two_coefficients()
    {
        // JCGM 100:2008, H.3: corrections b at t, b = y1 + y2·(t − 20 °C); y1 = −0.1712 °C, y2 = 0.002 18. More digits: −0.171 203 79, 0.002 182 698.
        double[] t = [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511];
        double[] b = [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160];
        var equations = new NormalEquations(2);
        // A reading with the weight 2 is two readings.
        for (var i = 0; i < t.Length; i++) equations.Add([(0, 1), (1, t[i] - 20)], b[i], 2);
        var solved = equations.Solve();
        Assert.Equal(-0.17120379, solved[0], 8);
        Assert.Equal(0.002182698, solved[1], 9);
    }

    [Fact]
    public void An_unknown_that_stands_in_no_equation_is_a_mistake_of_ours()
    {
        var equations = new NormalEquations(2);
        equations.Add([(0, 1)], 3, 1);
        Assert.Throws<ArgumentException>(() => equations.Solve());
    }
}
