using CsCheck;
using Lidoff.Numbers.Quantities;

namespace Lidoff.Numbers.Tests.Quantities;

public sealed class UnitReaderTests
{
    // Prefixes and derived units: SI brochure, 9th edition, tables 4 and 7.
    [Theory]
    [InlineData("µA", "µA", 1e-6)]
    [InlineData("μA", "µA", 1e-6)]
    [InlineData("uA", "µA", 1e-6)]
    [InlineData("kohm", "kΩ", 1e3)]
    [InlineData("M\u2126", "MΩ", 1e6)]
    [InlineData("mΩ", "mΩ", 1e-3)]
    [InlineData("KHz", "kHz", 1e3)]
    [InlineData("kg", "kg", 1)]
    [InlineData("mg", "mg", 1e-6)]
    [InlineData("mA·s", "mA·s", 1e-3)]
    [InlineData("mA s", "mA·s", 1e-3)]
    [InlineData("mA.s", "mA·s", 1e-3)]
    [InlineData("mV/A", "mV/A", 1e-3)]
    [InlineData("m/s²", "m/s²", 1)]
    [InlineData("m s⁻²", "m/s²", 1)]
    [InlineData("mm^3", "mm³", 1e-9)]
    [InlineData("min", "min", 60)]
    [InlineData("mil", "mil", 25.4e-6)]
    [InlineData("hPa", "hPa", 100)]
    [InlineData("mbar", "mbar", 100)]
    public void Reads_units_as_they_are_typed(string typed, string symbol, double factor)
    {
        var unit = UnitReader.Read(typed, "here").Value;
        Assert.Equal(symbol, unit.Symbol);
        Assert.Equal(factor, unit.Factor);
        Assert.Equal(unit, UnitReader.Read(unit.Symbol, "here").Value);
    }

    [Theory]
    [InlineData("", "A unit is missing.")]
    [InlineData("furlong", "I do not know the unit \"furlong\".")]
    [InlineData("MAH", "I do not know the unit \"MAH\". Is it MAh or mAh?")]
    [InlineData("hz", "I do not know the unit \"hz\". Is it Hz?")]
    [InlineData("dB", "\"dB\" can be a ratio of powers or of voltages: give the plain ratio, or the value in W or V.")]
    [InlineData("m^0", "The exponent in \"m^0\" cannot be read: write it as m^2 or m².")]
    public void Says_what_it_does_not_know(string typed, string say) => Assert.Equal(say, UnitReader.Read(typed, "here").Faults[0].Say);

    [Fact]
    public void No_text_makes_it_throw() => Gen.Select(Gen.String, Gen.String[Gen.Char["mAshVkµμΩ/·^²³⁻-1234 °CFd*."], 0, 12])
        .Sample((any, near) => (UnitReader.Read(any, "") is var a) && (UnitReader.Read(near, "") is var b) && (a.Ok || a.Faults.Count == 1) && (b.Ok || b.Faults.Count == 1), iter: 3000);

    [Fact]
    public void Every_ready_made_unit_reads_back_from_its_symbol()
    {
        var units = typeof(Units).GetFields().Select(field => (Unit)field.GetValue(null)!).ToList();
        Assert.True(units.Count > 60);
        Assert.All(units, unit => Assert.Equal(unit, UnitReader.Read(unit.Symbol, "here").Value));
    }
}
