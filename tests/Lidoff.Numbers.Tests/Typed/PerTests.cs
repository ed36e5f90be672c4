using Lidoff.Numbers.Quantities;
using Lidoff.Numbers.Typed;

namespace Lidoff.Numbers.Tests.Typed;

public sealed class PerTests
{
    // A day has 86,400 s (SI Brochure, 9th edition, table 8).
    [Theory]
    [InlineData("2 per day", 2 / 86400.0)]
    [InlineData("86400 per d", 1.0)]
    [InlineData("12 per h", 12 / 3600.0)]
    [InlineData("3 Per s", 3.0)]
    public void A_rate_may_be_said_in_words(string typed, double hertz) =>
        Assert.Equal(hertz, TypedQuantity.Read(typed, Units.Hertz, "rate").Value.Quantity.Si, 12);

    // A rate whose unit merely begins with "cent" or "mil" is a rate: 1 min is 60 s (SI Brochure table 8), a mil 25.4 µm (the inch of 1959), a
    // milligram 1e-6 kg.
    [Theory]
    [InlineData("6 V per min", "V/s", 0.1)]
    [InlineData("127 V per mil", "V/m", 5e6)]
    [InlineData("3 V per mg", "V/kg", 3e6)]
    public void What_only_begins_like_per_cent_is_still_divided_by(string typed, string unit, double si) =>
        Assert.Equal(si, TypedQuantity.Read(typed, UnitReader.Read(unit, "unit").Value, "rate").Value.Quantity.Si, si * 1e-12);

    // A hundredth and a thousandth (ISO 80000-1, 6.5.5).
    [Theory]
    [InlineData("5 per cent", 0.05)]
    [InlineData("5 Per Cent", 0.05)]
    [InlineData("5 percent", 0.05)]
    [InlineData("12 per mille", 0.012)]
    [InlineData("12 permille", 0.012)]
    public void Per_cent_and_per_mille_are_shares_and_no_rates(string typed, double share) =>
        Assert.Equal(share, TypedQuantity.Read(typed, Units.One, "share").Value.Quantity.Si, 12);

    [Fact]
    public void A_rate_by_a_thing_that_is_no_unit_says_so_and_is_not_taken_for_a_share()
    {
        Assert.Equal("I do not know the unit \"centre\".", Assert.Single(TypedQuantity.Read("5 per centre", Units.One, "share").Faults).Say);
        Assert.Equal("I do not know the unit \"millet\".", Assert.Single(TypedQuantity.Read("5 per millet", Units.One, "share").Faults).Say);
    }
}
