using Lidoff.Numbers.Quantities;

namespace Lidoff.Numbers.Tests.Quantities;

public sealed class QuantityTests
{
    [Theory]
    [InlineData(1, 3.6)]
    [InlineData(45, 162)]
    [InlineData(1000, 3600)]
    public void Milliampere_hours_are_coulombs(double mAh, double coulombs)
    {
        // The hour is 3600 s and the coulomb 1 A·s (SI brochure, 9th edition).
        Assert.Equal(coulombs, Quantity.Of(mAh, Units.MilliampereHour).Si);
        Assert.Equal(mAh, Quantity.Of(coulombs, Units.Coulomb).In(Units.MilliampereHour));
        Assert.Equal(coulombs * 1000, Quantity.Of(mAh, Units.MilliampereHour).In(Units.MilliampereSecond));
    }

    [Fact]
    public void Charges_in_different_units_add_as_charges_not_as_numbers()
    {
        var sum = Quantity.Of(1, Units.MilliampereHour) + Quantity.Of(3600, Units.MilliampereSecond);
        Assert.Equal(2, sum.In(Units.MilliampereHour));
    }

    [Fact]
    public void Charge_and_energy_refuse_with_a_sentence()
    {
        var sum = Quantity.Of(45, Units.MilliampereHour).Plus(Quantity.Of(45, Units.MilliwattHour), "capacity");
        Assert.Equal("Charge and energy do not add. A voltage turns one into the other.", sum.Faults[0].Say);
        Assert.Equal("capacity", sum.Faults[0].Where);
        Assert.Throws<ArgumentException>(() => Quantity.Of(1, Units.Metre) + Quantity.Of(1, Units.Volt));
        Assert.Throws<ArgumentException>(() => Quantity.Of(1, Units.Metre).In(Units.Volt));
    }

    [Fact]
    public void A_pouch_that_prints_0_45_watt_hours_holds_about_122_milliampere_hours()
    {
        // Common practice, no source: energy printed on a cell divided by its nominal 3.7 V.
        var charge = Quantity.Of(0.45, Units.WattHour) / Quantity.Of(3.7, Units.Volt);
        Assert.Equal(Dimensions.Charge, charge.Dimension);
        Assert.Equal(121.6, charge.In(Units.MilliampereHour), 0.05);
    }

    [Fact]
    public void A_double_in_a_decimal_prefix_is_the_nearest_double_in_si()
    {
        Assert.Equal(0.012, Quantity.Of(12, Units.Milliampere).Si);
        Assert.Equal(3.7e-3, Units.Milliampere.ToSi(3.7));
        Assert.Equal(0.0037, Units.Milliampere.ToSi(Units.Milliampere.FromSi(0.0037)));
    }

    [Theory]
    [InlineData(32, 273.15)]
    [InlineData(212, 373.15)]
    [InlineData(-40, 233.15)]
    [InlineData(-459.67, 0)]
    public void Fahrenheit_has_its_fixed_points(double fahrenheit, double kelvin) =>
        Assert.Equal(kelvin, Units.DegreeFahrenheit.ToSi(fahrenheit), 1e-10); // ice and steam points; -40 is the same in °C

    [Fact]
    public void Pound_per_square_inch_is_6894_757_pascal() =>
        Assert.Equal(6894.757, Units.PoundPerSquareInch.Factor, 5e-4); // NIST SP 811, appendix B.8: 6.894 757 E+03

    [Fact]
    public void Dimensions_without_a_word_are_written_in_base_units() =>
        Assert.Equal("m·s⁻³", Dimensions.Name(Dimensions.Acceleration / Dimensions.Time));
}
