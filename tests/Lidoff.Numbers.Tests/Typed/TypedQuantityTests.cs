using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Quantities;
using Lidoff.Numbers.Typed;

namespace Lidoff.Numbers.Tests.Typed;

public sealed class TypedQuantityTests : ReaderTable<TypedQuantity>
{
    protected override Outcome<TypedQuantity> Read(string? text) => TypedQuantity.Read(text, null, "here");

    protected override string Write(TypedQuantity value) => R(value.Quantity.Si) + "e0"[(R(value.Quantity.Si).Contains('E', StringComparison.Ordinal) ? 2 : 0)..] + (value.Quantity.Dimension == Dimension.None ? "" : " " + Dimensions.BaseUnits(value.Quantity.Dimension));

    // Inch and mil: the inch is 25.4 mm by definition (1959). mAh: 3.6 C by definition of coulomb and hour (SI brochure).
    protected override IEnumerable<(string Typed, string Written)> Good =>
    [
        ("10 mil", "0.000254e0 m"), ("10mil", "0.000254e0 m"), ("1 in", "0.0254e0 m"), ("1\"", "0.0254e0 m"), ("10 mm", "0.01e0 m"), ("10 µm", "1E-05 m"), ("10 μm", "1E-05 m"), ("10um", "1E-05 m"),
        ("45 mAh", "162e0 s·A"), ("1 mAh", "3.6e0 s·A"), ("3600 mA·s", "3.6e0 s·A"), ("3600 mAs", "3.6e0 s·A"), ("3600 mA*s", "3.6e0 s·A"), ("3.6 C", "3.6e0 s·A"), ("1000 µAh", "3.6e0 s·A"),
        ("5 mA", "0.005e0 A"), ("12 mА", "0.012e0 A"), ("3,7 V", "3.7e0 m²·kg·s⁻³·A⁻¹"), ("3V3", "3.3e0 m²·kg·s⁻³·A⁻¹"),
        ("4R7", "4.7e0 m²·kg·s⁻³·A⁻²"), ("4.7 \u2126", "4.7e0 m²·kg·s⁻³·A⁻²"), ("4.7 kΩ", "4700e0 m²·kg·s⁻³·A⁻²"), ("4.7 kohm", "4700e0 m²·kg·s⁻³·A⁻²"), ("4k7 Ω", "4700e0 m²·kg·s⁻³·A⁻²"), ("47 R", "47e0 m²·kg·s⁻³·A⁻²"), ("1 KΩ", "1000e0 m²·kg·s⁻³·A⁻²"),
        ("10k", "10000e0"), ("50 %", "0.5e0"), ("2 min", "120e0 s"), ("75h", "270000e0 s"), ("25 °C", "298.15e0 K"), ("25 ℃", "298.15e0 K"), ("0 °F", "255.3722222222222e0 K"), ("3 m/s²", "3e0 m·s⁻²"), ("3 m/s^2", "3e0 m·s⁻²"), ("10 mm2", "1E-05 m²"), ("10m2", "10e0 m²"),
    ];

    protected override IEnumerable<(string? Typed, string Say)> Bad =>
    [
        ("4Ah", "Is \"4Ah\" the hexadecimal number 0x4A (74), or a number with the unit Ah?"),
        ("45 MAH", "I do not know the unit \"MAH\". Is it MAh or mAh?"), ("8 mhz", "I do not know the unit \"mhz\". Is it MHz or mHz?"), ("3 parsec", "I do not know the unit \"parsec\"."),
        ("3 dB", "\"dB\" can be a ratio of powers or of voltages: give the plain ratio, or the value in W or V."), ("0 dBm", "\"dBm\" can be a ratio of powers or of voltages: give the plain ratio, or the value in W or V."),
        ("1.000 V", "Is \"1.000\" 1 or 1000?"), ("~5 mA", "\"~5 mA\" says about: how far off can it be? Write 3.7±0.1 or 3.5..4.2?"),
        ("<5 mA", "\"<5 mA\" says one end only: what is the other? Write a range, 3.5..4.2?"), ("3.7±0.1 V", "\"3.7±0.1 V\" has an uncertainty or a range; one value is wanted here."),
        ("5 °C/W", "°C cannot stand in a product or quotient, because its zero is not zero: write K for a difference."), ("1O0", "\"1O0\" has the letter O among its digits. Is it the digit 0?"),
        ("3-4 V", "Is \"3-4 V\" a range? Then write two dots between its ends: 3.5..4.2?"), ("3 m^99", "The exponent in \"m^99\" cannot be read: write it as m^2 or m²."),
        ("mA", "\"mA\" does not begin with a number."), ("225 mAh 10", "A number stands behind the unit: write a doubt with ±, as in 26 mm ± 0.05."),
    ];

    [Theory]
    [InlineData("100n", 1e-7)]
    [InlineData("0n5", 5e-10)]
    [InlineData("4.7", 4.7e-6)]
    [InlineData("3.3 pF", 3.3e-12)]
    [InlineData("4u7", 4.7e-6)]
    public void A_bare_prefix_is_one_of_the_fields_own_unit(string typed, double farads) =>
        Assert.Equal(farads, TypedQuantity.Read(typed, Units.Microfarad, "here").Value.Quantity.Si);

    [Fact]
    public void Ampere_hours_are_no_question_where_a_charge_is_wanted() =>
        Assert.Equal(14400, TypedQuantity.Read("4Ah", Units.MilliampereHour, "here").Value.Quantity.Si);

    [Theory]
    [InlineData("45 mWh", "45 mWh is in mWh, which is energy; here charge is wanted, for example in mAh. A voltage turns one into the other.")]
    [InlineData("45 mA", "45 mA is in mA, which is current; here charge is wanted, for example in mAh. A time turns one into the other.")]
    [InlineData("4R7", "4R7 is in Ω, which is resistance; here charge is wanted, for example in mAh.")]
    [InlineData("2k2", "\"2k2\" is written as resistors and capacitors are; here charge is wanted, for example in mAh.")]
    public void A_unit_of_another_dimension_is_refused_with_both_named(string typed, string say) =>
        Assert.Equal(say, TypedQuantity.Read(typed, Units.MilliampereHour, "here").Faults[0].Say);

    [Fact]
    public void A_small_m_behind_ohms_is_asked_about() =>
        Assert.Equal("Is the m in \"10m\" milli or mega? Write the unit, for example mΩ or MΩ?", TypedQuantity.Read("10m", Units.Ohm, "here").Faults[0].Say);

    [Fact]
    public void Look_alike_letters_in_a_unit_are_flagged() =>
        Assert.Equal(["Taken for Latin characters: А (U+0410)."], TypedQuantity.Read("12 mА", Units.Ampere, "here").Value.Remarks);

    [Theory]
    [InlineData("±0.05", 5e-5)]
    [InlineData("0.05", 5e-5)]
    [InlineData("+/- 50 µm", 5e-5)]
    public void An_uncertainty_stands_alone(string typed, double metres) =>
        Assert.Equal(metres, TypedQuantity.ReadUncertainty(typed, Units.Millimetre, "u_mm").Value);

    [Fact]
    public void An_uncertainty_of_a_temperature_has_no_offset() =>
        Assert.Equal(2, TypedQuantity.ReadUncertainty("±2 °C", Units.DegreeCelsius, "u").Value);
}
