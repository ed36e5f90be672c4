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
}
