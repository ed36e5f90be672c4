using CsCheck;
using Lidoff.Numbers.Quantities;
using Lidoff.Numbers.Typed.Codes;
using Lidoff.Numbers.Typed.Codes.Bands;

namespace Lidoff.Numbers.Tests.Typed.Codes.Bands;

public sealed class BandOddsTests
{
    private static BandOdds Typed(string text, double firstToLast = BandOdds.BegunAtTheFirst, PassiveSort? sort = null) => BandOdds.Of(TypedBands.Read(text).Value, firstToLast, sort);

    // Worked examples of a public chart of IEC 60062 (resistorcolorcodes.org): the first four. Green blue brown gold: read in a list of E24 resistors.
    // Brown black orange gold: read in a table of the code. The five- and six-band ones: from the chart's table, reckoned by hand.
    [Theory]
    [InlineData("brown black red gold", 1e3, 5, null)]
    [InlineData("yellow violet red gold", 4.7e3, 5, null)]
    [InlineData("red red orange gold", 22e3, 5, null)]
    [InlineData("brown black black gold brown", 10, 1, null)]
    [InlineData("green blue brown gold", 560, 5, null)]
    [InlineData("brown black orange gold", 10e3, 5, null)]
    [InlineData("brown black black red brown", 10e3, 1, null)]
    [InlineData("yellow violet black orange green", 470e3, 0.5, null)]
    [InlineData("red violet green brown brown red", 2.75e3, 1, 50.0)]
    [InlineData("BNBKRDGD", 1e3, 5, null)]
    [InlineData("ye, vt, rd, sr", 4.7e3, 10, null)]
    [InlineData("yellow-violet-brown", 470, 20, null)]
    public void The_likeliest_reading_is_the_published_one(string text, double ohms, double percent, double? drift)
    {
        var first = Typed(text).Readings[0];
        Assert.Equal((ohms, Units.Ohm, percent, drift), (first.Reading.Si, first.Reading.Unit, first.Reading.Tolerances[0].Above, first.Reading.DriftPpm));
        Assert.False(first.FromEnd);
    }

    // IEC 60062:2016 as two public tables give it (kodekata.net; resistorcolorcodes.org/chart); where they differ, violet 0.5 or 0.1 % and grey 0.1 or 0.05 %,
    // the checkbook's second-hand 0.01 % (older parts 0.05 %) for grey, and 0.1 % for violet by two further tables.
    [Theory]
    [InlineData(BandColour.Black, 0, 0, null, 250.0)]
    [InlineData(BandColour.Brown, 1, 1, 1.0, 100.0)]
    [InlineData(BandColour.Red, 2, 2, 2.0, 50.0)]
    [InlineData(BandColour.Orange, 3, 3, 0.05, 15.0)]
    [InlineData(BandColour.Yellow, 4, 4, 0.02, 25.0)]
    [InlineData(BandColour.Green, 5, 5, 0.5, 20.0)]
    [InlineData(BandColour.Blue, 6, 6, 0.25, 10.0)]
    [InlineData(BandColour.Violet, 7, 7, 0.1, 5.0)]
    [InlineData(BandColour.Grey, 8, 8, 0.01, 1.0)]
    [InlineData(BandColour.White, 9, 9, null, null)]
    [InlineData(BandColour.Gold, null, -1, 5.0, null)]
    [InlineData(BandColour.Silver, null, -2, 10.0, null)]
    [InlineData(BandColour.Pink, null, -3, null, null)]
    public void Each_colour_means_what_the_tables_say(BandColour colour, int? digit, int exponent, double? percent, double? drift)
    {
        Assert.Equal((digit, exponent, drift), (BandTable.Digit(colour), BandTable.Exponent(colour), BandTable.DriftPpm(colour)));
        if (percent is { } p) Assert.Contains(p, BandTable.Percents(colour));
        else Assert.Empty(BandTable.Percents(colour));
    }

    [Fact]
    public void A_code_is_read_from_either_end()
    {
        // Gold is no digit: from its end alone.
        Assert.Equal((1e3, true), (Typed("gold red black brown").Readings[0].Reading.Si, Typed("gold red black brown").Readings[0].FromEnd));
        // Brown red red red brown is itself either way; brown black black red red is 10 kΩ ± 2 % or 22 kΩ of three figures less usual.
        var odds = Typed("brown black black red red", 1);
        Assert.Contains(odds.Readings, each => !each.FromEnd && (each.Reading.Si, each.Reading.Tolerances[0].Above) == (10e3, 2));
        Assert.Contains(odds.Readings, each => each.FromEnd && (each.Reading.Si, each.Reading.Tolerances[0].Above) == (220, 1));
        // What tells the direction counts.
        double Forward(double firstToLast) => Typed("brown black black red red", firstToLast).Readings.Where(each => !each.FromEnd).Sum(each => each.P);
        Assert.True(Forward(10) > Forward(1) && Forward(1) > Forward(0.1));
    }

    // Red violet brown gold is 270 µH ± 5 %: read in a coil maker's page on its colour code. Brown black orange gold as an inductor is 10 mH by the same rule.
    [Theory]
    [InlineData("red violet brown gold", 270e-6, 5)]
    [InlineData("brown black silver silver", 0.1e-6, 10)]
    public void An_inductor_is_read_in_microhenry(string text, double henries, double percent)
    {
        var first = Typed(text, sort: PassiveSort.Inductor).Readings[0].Reading;
        Assert.Equal((henries, Units.Henry, percent), (Math.Round(first.Si, 12), first.Unit, first.Tolerances[0].Above));
        // Where nobody says what it is, both are listed.
        Assert.Contains(Typed(text).Readings, each => each.Reading.Unit == Units.Henry);
        Assert.Contains(Typed(text).Readings, each => each.Reading.Unit == Units.Ohm);
    }

    [Fact]
    public void An_open_band_leaves_what_values_there_are()
    {
        var odds = Typed("yellow ? red gold");
        Assert.Equal(4.7e3, odds.Readings[0].Reading.Si);
        // Red and orange look alike in warm light: 22 kΩ and 23 kΩ, of which only the first is in a series.
        odds = Typed("red red|orange orange gold");
        Assert.Equal([22e3, 23e3], odds.Readings.Where(each => each.Reading.Unit == Units.Ohm && !each.FromEnd).Select(each => each.Reading.Si));
        Assert.True(odds.Readings[0].P > 0.7);
    }

    [Fact]
    public void Other_numbers_of_bands_and_colours_without_meaning_say_so()
    {
        Assert.Equal((0.0, "one black band, zero-ohm link"), (Typed("black").Readings[0].Reading.Si, Typed("black").Readings[0].Reading.Rule));
        Assert.Equal((0, 1.0), (Typed("red red").Readings.Count, Typed("red red").NoneP));
        Assert.Empty(Typed("gold gold gold gold").Readings);
        // Five with a metal fourth may be four and a temperature coefficient.
        Assert.Contains(Typed("yellow violet red gold red").Readings, each => each.Reading.Rule == "4 bands and a temperature coefficient" && (each.Reading.Si, each.Reading.DriftPpm) == (4.7e3, 50.0));
    }

    [Fact]
    public void What_is_no_colour_is_named()
    {
        Assert.Equal(["\"purpel\" is no colour of a band: brown or BN, red|orange for either, ? for one that cannot be told.", "\"x\" is no colour of a band: brown or BN, red|orange for either, ? for one that cannot be told."],
            TypedBands.Read("brown purpel x").Faults.Select(fault => fault.Say));
        Assert.Equal("7 bands are more than any code has; at most 6 are read.", TypedBands.Read("red red red red red red red").Faults[0].Say);
        Assert.Equal("No band is named.", TypedBands.Read(null).Faults[0].Say);
        Assert.Equal("4 bands that cannot be told leave everything open; at most 3 may be.", TypedBands.Read("red ? ? ? ?").Faults[0].Say);
        Assert.True(TypedBands.Looks("brown black") && TypedBands.Looks("BNBK") && TypedBands.Looks("red|orange x"));
        Assert.False(TypedBands.Looks("4K7") || TypedBands.Looks("") || TypedBands.Looks("black8"));
    }

    [Fact]
    public void Whatever_the_bands_everything_sums_to_one() => Gen.Double[0, 1].Array[BandTable.All.Count].Array[1, 4].Sample(
        shares =>
        {
            var odds = BandOdds.Of([.. shares.Select(each => new BandShares(each))]);
            return Math.Abs(odds.Readings.Sum(each => each.P) + odds.NoneP - 1) < 1e-9 && odds.Readings.All(each => each.P is > 0 and <= 1);
        },
        iter: 20);
}
