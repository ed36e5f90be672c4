using Lidoff.Numbers.Quantities;

namespace Lidoff.Numbers.Tests.Quantities;

public sealed class QuantityTextTests
{
    // JCGM 100:2008: H.1 prints 50.000 838 mm with 32 nm; 7.2.2 prints 100.021 47 g with 0.35 mg; 7.2.6 rounds 10.057 62 Ω with
    // 27 mΩ to 10.058 Ω; H.2 prints 127.732 Ω with 0.071 Ω. The last two of these were recalled, the others read.
    [Fact]
    public void Published_results_come_out_as_published()
    {
        Assert.Equal("50.000838 ± 0.000032 mm", QuantityText.WithUncertainty(50.000838e-3, 31.658e-9, Units.Millimetre));
        Assert.Equal("100.02147 ± 0.00035 g", QuantityText.WithUncertainty(0.10002147, 0.35e-6, Units.Gram));
        Assert.Equal("10.058 ± 0.027 Ω", QuantityText.WithUncertainty(10.05762, 0.027346, Units.Ohm));
        Assert.Equal("127.732 ± 0.071 Ω", QuantityText.WithUncertainty(127.73217, 0.07107, Units.Ohm));
    }

    [Theory]
    [InlineData(3.7, 0.1, "V", "3.70 ± 0.10 V")]
    [InlineData(0.0037, 0.0001, "V", "3.70 ± 0.10 mV")]
    [InlineData(3.7, 0.0998, "V", "3.70 ± 0.10 V")]
    [InlineData(3.7, 0.0994, "V", "3.700 ± 0.099 V")]
    [InlineData(12345, 1200, "Ω", "12.3 ± 1.2 kΩ")]
    [InlineData(0.9999996, 0.00012, "V", "1.00000 ± 0.00012 V")]
    [InlineData(0.9999999, 0.012, "V", "1.000 ± 0.012 V")]
    [InlineData(-995e-9, 553.6e-9, "s", "-1.00 ± 0.55 µs")]
    [InlineData(-283.7, 995, "Ω", "-0.3 ± 1.0 kΩ")]
    [InlineData(-0.00001, 0.01, "V", "0 ± 10 mV")]
    [InlineData(0, 0.5, "V", "0 ± 500 mV")]
    [InlineData(298.15, 0.5, "°C", "25.00 ± 0.50 °C")]
    [InlineData(0, 0, "V", "0 V")]
    [InlineData(5e-6, 0, "A", "5 µA")]
    [InlineData(162, 3.6, "mAh", "45.0 ± 1.0 mAh")]
    public void Two_digits_of_uncertainty_and_the_value_to_the_same_place(double si, double u, string unit, string written) =>
        Assert.Equal(written, QuantityText.WithUncertainty(si, u, UnitReader.Read(unit, "").Value));

    [Fact]
    public void An_interval_shows_both_ends_to_one_place()
    {
        Assert.Equal("3.53 to 3.87 V", QuantityText.Interval(3.53, 3.87, Units.Volt));
        Assert.Equal("6.88 to 7.08 mm", QuantityText.Interval(6.88e-3, 7.08e-3, Units.Millimetre));
    }

    [Fact]
    public void A_column_stands_under_its_decimal_mark()
    {
        var rows = QuantityText.Column([(3.7, 0.1), (12.25, 0.025), (100, 0)], Units.Volt);
        Assert.Equal(["  3.70  ± 0.10  V", " 12.250 ± 0.025 V", "100             V"], rows);
    }

    [Fact]
    public void The_form_for_files_is_the_shortest_that_reads_back() => Assert.Equal("0.1", QuantityText.RoundTrip(0.1));

    // Large numbers in units that take no prefix stand in digits: nobody reads 2.611E+04 h as a time.
    [Fact]
    public void A_value_alone_needs_no_power_of_ten() => Assert.Equal("26110 h", QuantityText.Value(26112 * 3600.0, Units.Hour));

    [Theory]
    [InlineData(5.68, 0.173, "5.68 ± 0.17 g")]
    [InlineData(11, 0.1, "11.00 ± 0.10 g")]
    [InlineData(11, null, "11 g")]
    [InlineData(-0.004, 0.025, "-0.004 ± 0.025 g")]
    public void What_was_noted_has_two_digits_of_doubt_and_the_value_to_the_same_place(double value, double? u, string text) => Assert.Equal(text, QuantityText.Noted(value, u, "g"));

    [Fact]
    public void Sides_of_one_doubt_are_written_to_its_place() => Assert.Equal("20.10 × 14.90 × 4.00 mm, each ± 0.10", QuantityText.Each([20.1, 14.9, 4], 0.1, "mm"));
}
