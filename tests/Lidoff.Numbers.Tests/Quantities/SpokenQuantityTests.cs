using Lidoff.Numbers.Quantities;

namespace Lidoff.Numbers.Tests.Quantities;

public sealed class SpokenQuantityTests
{
    // By hand: 26,100 h are 1087.5 days, and 365.25 days are a Julian year (IAU): 2.977 years; 2500 h are 0.285 years. 100 h are 4.17 days.
    // 2,000 h are 83.3 days, and a twelfth of a Julian year is 30.44 days: 2.74 months.
    [Theory]
    [InlineData(26100, 2500, "h", "26100 ± 2500 h (2.98 ± 0.29 years)")]
    [InlineData(100, 5, "h", "100.0 ± 5.0 h (4.17 ± 0.21 days)")]
    [InlineData(2000, 100, "h", "2000 ± 100 h (2.74 ± 0.14 months)")]
    [InlineData(47, 5, "h", "47.0 ± 5.0 h")]
    [InlineData(10, 1, "d", "10.0 ± 1.0 d")]
    [InlineData(26100, 0, "h", "26100 h (2.98 years)")]
    public void Long_durations_stand_in_the_unit_people_think_of_too(double value, double u, string unit, string text)
    {
        var given = UnitReader.Read(unit, "").Value;
        Assert.Equal(text, SpokenQuantity.Of(given.ToSi(value), given.SpanToSi(u), given));
    }

    [Fact]
    public void An_interval_of_a_long_duration_does_so_at_both_ends_and_a_rate_does_not()
    {
        Assert.Equal("22000 to 30200 h (2.51 to 3.45 years)", SpokenQuantity.Interval(22000 * 3600.0, 30200 * 3600.0, Units.Hour));
        Assert.DoesNotContain("(", SpokenQuantity.Of(600000 / 3600.0, 60000 / 3600.0, Units.Hertz), StringComparison.Ordinal);
    }
}
