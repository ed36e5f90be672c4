using Lidoff.Numbers.Quantities;
using Lidoff.Numbers.Typed.Codes;

namespace Lidoff.Numbers.Tests.Typed.Codes;

public sealed class RatedCodesTests
{
    // A475 and 10 6V: read in a published note on marks of small capacitors (letters e G J A C D E V H). 2A474J and 2A102K: read in a public table of
    // EIA voltage codes and in an answer about film capacitors. 105K 330V: read in an article on rated capacitance. KA2 and S3: read in the same note.
    [Theory]
    [InlineData("A475", 4.7e-6, 10)]
    [InlineData("J106", 10e-6, 6.3)]
    [InlineData("e226", 22e-6, 2.5)]
    [InlineData("E226", 22e-6, 25)]
    [InlineData("2A474J", 470e-9, 100)]
    [InlineData("2A102K", 1e-9, 100)]
    [InlineData("1H104K", 100e-9, 50)]
    [InlineData("105K 330V", 1e-6, 330)]
    [InlineData("10 6V", 10e-6, 6)]
    [InlineData("JA7", 10e-6, 6.3)]
    public void A_capacitor_tells_its_rated_voltage(string code, double farads, double volts) =>
        Assert.Contains(ComponentCodes.Read(code), reading => reading.Unit == Units.Farad && Math.Abs((reading.Si / farads) - 1) < 1e-9 && reading.RatedVolts == volts);

    [Fact]
    public void A_makers_letter_before_letter_and_digit_adds_nothing()
    {
        Assert.Equal(["100 pF (maker's letter, capacitor letter and digit)"], ComponentCodes.Read("KA2").Where(reading => reading.Unit == Units.Farad).Select(reading => reading.ToString()));
        // 2A474J holds its tolerance as well; a voltage letter needs a part as large as electrolytic ones are.
        Assert.Equal("470 nF ± 5 %, 100 V (capacitor digits with EIA voltage)", ComponentCodes.Read("2A474J").Single().ToString());
        Assert.DoesNotContain(ComponentCodes.Read("A101"), reading => reading.RatedVolts is not null);
    }

    // Read in a public table of this code: D03, E31 and F41.
    [Theory]
    [InlineData("D03", 120e3, 2)]
    [InlineData("E31", 1.8e6, 5)]
    [InlineData("F41", 47e6, 5)]
    public void A_letter_before_two_digits_is_a_place_in_e24(string code, double ohms, double percent)
    {
        var reading = Assert.Single(E24Code.Read(code));
        Assert.Equal((ohms, percent), (reading.Si, reading.Tolerances[0].Above));
    }

    // Letters as a published note on fuses has them; the form of IEC 60127-1 from memory.
    [Theory]
    [InlineData("2A", 2, null)]
    [InlineData("T315mAL250V", 0.315, 250.0)]
    [InlineData("F1A", 1, null)]
    [InlineData("TT 3.15A H 250V", 3.15, 250.0)]
    public void A_fuse_tells_its_current(string code, double amperes, double? volts)
    {
        var reading = Assert.Single(FuseCode.Read(code));
        Assert.Equal((amperes, volts, PassiveSort.Fuse), (reading.Si, reading.RatedVolts, reading.Sort));
    }

    [Theory]
    [InlineData("A")]
    [InlineData("0A")]
    [InlineData("2AX")]
    [InlineData("500A")]
    [InlineData("2A 99V9")]
    public void What_is_no_fuse_mark_has_no_reading(string code) => Assert.Empty(FuseCode.Read(code));
}
