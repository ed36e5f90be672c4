namespace Lidoff.Numbers.Tests.Calculating.Published;

public sealed class EndGaugeTests
{
    [Fact]
    public void First_order_gives_the_length_and_spread_printed_in_annex_H1()
    {
        var value = new EndGauge().Run(EndGauge.Inputs);
        Assert.Equal(50.000838e-3, value.Value, 0.5e-9);
        Assert.Equal(32e-9, value.FirstOrderU, 0.5e-9);

        // H.1.6: 16.7 effective degrees of freedom.
        Assert.Equal(16.7, value.Dof, 0.05);

        // H.1.7: 34 nm with the second-order terms, which Monte Carlo contains.
        Assert.Equal(34e-9, value.U, 0.5e-9);
        Assert.Equal(0, value.Skipped);
        Assert.Equal(1, value.Shares.Sum(s => s.Share), 1e-12);
    }
}
