using CsCheck;
using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Quantities;
using Lidoff.Numbers.Typed;

namespace Lidoff.Numbers.Tests.Typed;

// Standard uncertainties of the shapes: JCGM 100:2008, 4.3.7 (half width over √3) and JCGM 101:2008, 6.4.4-6.4.5.
public sealed class UncertainTextTests
{
    [Theory]
    [InlineData("3.7", 3.7, 0)]
    [InlineData("3.700", 3.7, 0)]
    [InlineData("3,7", 3.7, 0)]
    [InlineData("3.7±0.1", 3.7, 0.1)]
    [InlineData("3700 mV ± 100 mV", 3.7, 0.1)]
    [InlineData("2..8", 5, 1.7320508075688772)]
    [InlineData("0..0..3", 1, 0.70710678118654757)]
    public void The_forms_give_value_and_standard_uncertainty_in_si(string typed, double value, double u)
    {
        var uncertain = UncertainText.Read(typed, Units.Volt, "v").Value;
        Assert.Equal(value, uncertain.Value, 1e-15);
        Assert.Equal(u, uncertain.U, 1e-15);
    }

    [Fact]
    public void A_bare_number_is_in_the_inputs_own_unit()
    {
        Assert.Equal(162, UncertainText.Read("45", Units.MilliampereHour, "capacity").Value.Value);
        Assert.Equal(3.6, UncertainText.Read("45±1", Units.MilliampereHour, "capacity").Value.U);
        Assert.Equal(0.012, UncertainText.Read("12 mA", Units.Microampere, "current").Value.Value);
    }

    [Theory]
    [InlineData("45 mWh", "45 mWh is in mWh, which is energy; here charge is wanted, for example in mAh. A voltage turns one into the other.")]
    [InlineData("NaN", "\"NaN\" is not a number that can be computed with.")]
    [InlineData("1,000", "Is \"1,000\" 1 or 1000?")]
    [InlineData("cell.csv#", "\"cell.csv#\" should name a file and a column: file.csv#column.")]
    [InlineData("#mAh", "\"#mAh\" should name a file and a column: file.csv#column.")]
    [InlineData("cell.csv#mAh", "\"cell.csv#mAh\" names a file, and here no file can be read.")]
    [InlineData("", "A number is missing.")]
    public void What_cannot_be_read_is_said(string typed, string say)
    {
        var fault = Assert.Single(UncertainText.Read(typed, Units.MilliampereHour, "capacity").Faults);
        Assert.Equal(("capacity", say), (fault.Where, fault.Say));
    }

    [Fact]
    public void A_column_becomes_an_empirical_value_in_si_whose_source_is_the_column()
    {
        var uncertain = UncertainText.Read("runs/cell.csv#mAh", Units.MilliampereHour, "capacity", Column).Value;
        Assert.Equal(7.2, uncertain.Value, 1e-12);
        Assert.Equal("runs/cell.csv#mAh", uncertain.Source);

        static Outcome<IReadOnlyList<double>> Column(string file, string column) => (file, column) == ("runs/cell.csv", "mAh") ? new double[] { 1, 2, 3 } : throw new InvalidOperationException();
    }

    [Fact]
    public void A_column_with_a_hole_in_it_is_refused()
    {
        Assert.Equal("Number 2 of the column \"a#b\" is not finite.", UncertainText.Read("a#b", Units.Volt, "v", (_, _) => new[] { 1, double.NaN }).Faults[0].Say);
        Assert.Equal("The column \"a#b\" holds no number.", UncertainText.Read("a#b", Units.Volt, "v", (_, _) => Array.Empty<double>()).Faults[0].Say);
        Assert.Equal("no such file", UncertainText.Read("a#b", Units.Volt, "v", (_, _) => new Fault("a", "a file", "no such file")).Faults[0].Say);
    }

    [Fact]
    public void No_text_makes_it_throw() => Gen.OneOf(Gen.String, Gen.String[Gen.Char["0123456789.,±(#) mVkR-eE"], 0, 16]).Sample(
        text => UncertainText.Read(text, Units.Volt, "v", (_, _) => new double[] { 1 }).TryValue(out var value) is var ok && (!ok || (double.IsFinite(value!.Value) && double.IsFinite(value.U))), iter: 5000);
}
