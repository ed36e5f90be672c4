using Lidoff.Seeing.Kinds;

namespace Lidoff.Seeing.Tests.Kinds;

/// <summary>
/// Limits of error as standards and law print them, put together by hand with GUM 4.3.7 (a rectangle of half-width a has a/√3), to four digits.
/// Limits: micrometer to 25 mm 4 µm and digital calliper to 100 mm 20 µm (tables of DIN 863 and DIN 862 as scribd.com, document 564783692,
/// prints them; ISO 3611 and ISO 13385-1 leave them to the maker); rules and tapes (a + b·L, L = 1 m, and c from a hook: UK SI 2016/1153,
/// schedule 1I, table 1, which is annex X of Directive 2014/32/EU): class I 0.1 + 0.1, class II 0.3 + 0.2 and 0.2 mm.
/// </summary>
public sealed class InstrumentErrorTests
{
    [Theory]
    // √(0.0023094² + 0.0002887² + 0.002²), a hand's 2 µm from memory.
    [InlineData("Micrometer screw", 0.0031)]
    [InlineData("Bügelmessschraube (Mikrometer)", 0.0031)]
    // √(0.0115470² + 0.0288675²); ±0.02 mm from memory.
    [InlineData("loupe, tenths", 0.0311)]
    [InlineData("eyepiece graticule", 0.0311)]
    // √(0.1154701² + 0.1443376² + 0.1443376²).
    [InlineData("steel rule", 0.2345)]
    [InlineData("Ruler", 0.2345)]
    // √(0.4041452² + 0.2886751²).
    [InlineData("tape rule", 0.4967)]
    public void An_instrument_has_its_own_error(string instrument, double u) => Assert.Equal(u, InstrumentErrors.For(instrument));

    [Theory]
    [InlineData("digital calliper")]
    [InlineData("dial gauge")]
    [InlineData("")]
    public void What_is_not_known_is_taken_for_a_calliper_to_half_a_micrometre(string instrument)
    {
        // √(0.0115470² + 0.01² + 0.0028868²) = 0.01555: limit, repeat (f-m-s.dk on DIN 862) and half a digit.
        Assert.Equal(0.01555, InstrumentErrors.For(instrument), 0.0006);
        Assert.Equal(0.015, InstrumentErrors.For(instrument));
    }
}
