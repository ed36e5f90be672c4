using Lidoff.Numbers.Calculating;
using Lidoff.Numbers.Spreads;

namespace Lidoff.Numbers.Tests.Calculating.Published;

/// <summary>JCGM 101:2008 clause 9.5: the end gauge again, with t, arcsine and curvilinear trapezoid inputs (its table 10).</summary>
public sealed class GaugeBlockTests
{
    private static readonly Uncertain[] Inputs =
    [
        Uncertain.StudentT(50_000_623e-9, 25e-9, 18), Uncertain.StudentT(215e-9, 6e-9, 24), Uncertain.StudentT(0, 4e-9, 5), Uncertain.StudentT(0, 7e-9, 8),
        Uncertain.Uniform(9.5e-6, 13.5e-6), Uncertain.Normal(-0.1, 0.2), Uncertain.Arcsine(-0.5, 0.5),
        Uncertain.CurvilinearTrapezoid(-1.0e-6, 1.0e-6, 0.1e-6), Uncertain.CurvilinearTrapezoid(-0.050, 0.050, 0.025),
    ];

    [Fact]
    public void Monte_Carlo_gives_36_nm_where_first_order_gives_32()
    {
        const double nominal = 50e-3;
        var value = new EndGauge().Run(Inputs, samples: 1_000_000);
        Assert.Equal(838e-9, value.Value - nominal, 0.5e-9);
        Assert.Equal(838e-9, value.Mean - nominal, 0.5e-9);
        Assert.Equal(32e-9, value.FirstOrderU, 0.5e-9);
        Assert.Equal(36e-9, value.U, 0.5e-9);
        Assert.True(value.Parted);

        // 99 %: printed 745 to 932 nm.
        var shortest = MonteCarlo.Run(new EndGauge(), Inputs, 1, 1_000_000, null, 1).Shortest(0.99);
        Assert.Equal(745e-9, shortest.Low - nominal, 2e-9);
        Assert.Equal(932e-9, shortest.High - nominal, 2e-9);
    }
}
