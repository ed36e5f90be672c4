using Lidoff.Numbers.Spreads;

namespace Lidoff.Numbers.Tests.Spreads;

/// <summary>JCGM 100:2008 annex H.3: calibration line of a thermometer about 20 °C.</summary>
public sealed class StraightLineTests
{
    private static readonly double[] Reading = [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511];
    private static readonly double[] Correction = [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160];

    [Fact]
    public void Line_and_doubts_match_annex_H3()
    {
        var line = StraightLine.Fit(Reading, Correction, origin: 20);
        Assert.Equal(-0.1712, line.Intercept, 0.00005);
        Assert.Equal(0.0029, line.UIntercept, 0.00005);
        Assert.Equal(0.00218, line.Slope, 0.000005);
        Assert.Equal(0.00067, line.USlope, 0.000005);
        Assert.Equal(-0.930, line.Correlation, 0.0005);
        Assert.Equal(0.0035, line.ResidualSpread, 0.00005);
        Assert.Equal(9, line.Dof);
    }

    [Fact]
    public void Correction_at_30_degrees_matches_annex_H3()
    {
        var (value, u) = StraightLine.Fit(Reading, Correction, origin: 20).At(30);
        Assert.Equal(-0.1494, value, 0.00005);
        Assert.Equal(0.0041, u, 0.00005);
    }

    [Fact]
    public void Origin_does_not_move_the_line()
    {
        var (here, uHere) = StraightLine.Fit(Reading, Correction).At(30);
        var (there, uThere) = StraightLine.Fit(Reading, Correction, origin: 24).At(30);
        Assert.Equal(here, there, 1e-12);
        Assert.Equal(uHere, uThere, 1e-12);
    }
}
