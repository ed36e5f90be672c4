using Lidoff.Numbers.Typed.Codes;

namespace Lidoff.Numbers.Tests.Typed.Codes;

// Metric 1608 read; the other sizes from memory of the EIA and IEC names.
public sealed class ChipSizeTests
{
    [Theory]
    [InlineData("0402", 1.0, 0.4)]
    [InlineData("0603", 1.6, 0.6)]
    [InlineData("0201", 0.6, 0.25)]
    public void Codes_that_exist_in_both_systems_give_both(string code, double imperialMm, double metricMm) =>
        Assert.Equal([imperialMm, metricMm], ChipSize.Read(code).Select(size => size.LengthMm));

    [Theory]
    [InlineData("1608", 1.6, 0.8)]
    [InlineData("1210", 3.2, 2.5)]
    [InlineData("01005", 0.4, 0.2)]
    public void Other_codes_give_one(string code, double length, double width)
    {
        var size = Assert.Single(ChipSize.Read(code));
        Assert.Equal((length, width), (size.LengthMm, size.WidthMm));
    }

    [Fact]
    public void The_imperial_code_names_its_length_to_a_quarter()
    {
        // Hundredths of an inch of 25.4 mm: the code names the length roughly, which is how a swapped system shows.
        foreach (var size in ChipSize.All.Where(size => size.Imperial.Length == 4))
        {
            var named = int.Parse(size.Imperial[..2], System.Globalization.CultureInfo.InvariantCulture) * 0.254;
            Assert.InRange(size.LengthMm / named, 1 / 1.25, 1.25);
        }
    }
}
