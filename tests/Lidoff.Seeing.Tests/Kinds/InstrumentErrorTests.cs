using Lidoff.Seeing.Kinds;

namespace Lidoff.Seeing.Tests.Kinds;

public sealed class InstrumentErrorTests
{
    [Theory]
    // Worked by hand: micrometer √(0.004²/3 + 0.001²/12 + 0.002²) = 0.00307; loupe with tenths √(0.02²/3 + 0.1²/12) = 0.0311;
    // steel rule √(0.1²/3 + 0.5²/12 + 0.145²) = 0.2129: two readings to half a millimetre, each 0.5/√12 = 0.144.
    [InlineData("Micrometer screw", 0.0031)]
    [InlineData("loupe", 0.0311)]
    [InlineData("steel ruler", 0.2127)]
    [InlineData("digital calliper", 0.015)]
    [InlineData("", 0.015)]
    public void An_instrument_has_its_own_error(string instrument, double u) => Assert.Equal(u, InstrumentErrors.For(instrument), 0.0003);
}
