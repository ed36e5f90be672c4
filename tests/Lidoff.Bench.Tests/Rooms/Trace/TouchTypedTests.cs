using Lidoff.Bench.Rooms.Trace.Typed;
using Lidoff.Numbers.Typed;

namespace Lidoff.Bench.Tests.Rooms.Trace;

/// <summary>The grammar is ours; how numbers are read is tested where the typed readers are.</summary>
public sealed class TouchTypedTests
{
    private static readonly TouchPair Held = new("U3.13", "GND");

    // A voltmeter's black lead stays on ground: common practice, no source.
    [Fact]
    public void Volts_at_one_point_are_read_against_ground_and_ohms_against_the_point_before()
    {
        var held = new TouchPair("U1.13", "C1.1");
        Assert.Equal(("U4.1", "GND", 1.8), (TouchTyped.Read("U4.1 1.8 V", held).Value.A, TouchTyped.Read("U4.1 1.8 V", held).Value.B, TouchTyped.Read("U4.1 1.8 V", held).Value.Volts));
        Assert.Equal("C1.1", TouchTyped.Read("U4.1 2k2", held).Value.B);
        Assert.Equal("GND", TouchTyped.Read("U4.1 1.8 V").Value.B);
    }

    [Fact]
    public void Two_points_and_a_reading()
    {
        Assert.Equal(new TouchTyped("U3.13", "GND", Beep: true), TouchTyped.Read("U3.13 GND beep").Value);
        Assert.Equal(new TouchTyped("U2.4", "VSYS", Ohms: 0.3), TouchTyped.Read("U2.4 VSYS 0.3").Value);
        Assert.Equal(new TouchTyped("C4.1", "GND", Open: true), TouchTyped.Read("C4.1 GND open").Value);
        Assert.Equal(new TouchTyped("U1.3", "GND", Volts: 1.8), TouchTyped.Read("U1.3 GND 1.8V").Value);
        Assert.Equal(new TouchTyped("R4.1", "R4.2", Ohms: 2200), TouchTyped.Read("R4.1 – R4.2 2k2").Value);
        Assert.Equal(new TouchTyped("R4.1", "R4.2", Ohms: 2200, UOhm: 22), TouchTyped.Read("R4.1 to R4.2 2.2 kΩ ± 1 %").Value);
        Assert.Equal(new TouchTyped("U1.3", "GND", Volts: -0.6, UV: 0.01), TouchTyped.Read("U1.3 GND -0.6 V ± 0.01").Value);
        Assert.Equal(new TouchTyped("U1.3", "GND", Beep: false), TouchTyped.Read("U1.3 GND no beep").Value);
        Assert.Equal(new TouchTyped("U1.3", "GND", Beep: true, ThresholdOhm: 40), TouchTyped.Read("U1.3 GND beep<40").Value);
        Assert.Equal(new TouchTyped("U1.3", "GND", Beep: true, Ohms: 0.2), TouchTyped.Read("U1.3 GND beep 0.2").Value);
        Assert.Equal(new TouchTyped("U1.3", "GND", Open: true), TouchTyped.Read("U1.3 GND OL").Value);
        // As it is said aloud, and as the meter's dial has it.
        Assert.Equal(new TouchTyped("U1.3", "GND", Beep: true), TouchTyped.Read("beep U1.3 GND").Value);
        Assert.Equal(new TouchTyped("U1.3", "GND", Open: true), TouchTyped.Read("open U1.3 GND").Value);
        Assert.Equal(new TouchTyped("U1.5", "GND", Volts: 3.3), TouchTyped.Read("U1.5 GND 3.3 V DC").Value);
    }

    [Theory]
    [InlineData("0.3", "U3.13", "GND", 0.3)]
    [InlineData("0,3", "U3.13", "GND", 0.3)]
    [InlineData("2.2 kΩ", "U3.13", "GND", 2200.0)]
    [InlineData("U3.14 0.3", "U3.14", "GND", 0.3)]
    [InlineData("U3.14 0.3 Ω", "U3.14", "GND", 0.3)]
    public void The_pair_stays_for_the_next_reading(string typed, string a, string b, double ohms) =>
        Assert.Equal(new TouchTyped(a, b, Ohms: ohms), TouchTyped.Read(typed, Held).Value);

    [Fact]
    public void A_reading_called_out_before_its_points_is_the_same_touch()
    {
        Assert.Equal(new TouchTyped("U1.1", "GND", Beep: true), TouchTyped.Read("beep U1.1 GND").Value);
        Assert.Equal(new TouchTyped("U1.1", "GND", Beep: false), TouchTyped.Read("no beep U1.1 GND", Held).Value);
        Assert.Equal(new TouchTyped("U1.1", "GND", Ohms: 0.3), TouchTyped.Read("0,3 Ω U1.1 GND").Value);
    }

    [Theory]
    [InlineData("U1.5 VDD 3.3 V DC")]
    [InlineData("U1.5 VDD 3.3VDC")]
    [InlineData("U1.5 VDD 3,3 Vdc")]
    public void Volts_of_the_DC_range_are_volts(string typed) => Assert.Equal(new TouchTyped("U1.5", "VDD", Volts: 3.3), TouchTyped.Read(typed).Value);

    [Fact]
    public void Words_alone_keep_the_pair_too()
    {
        Assert.Equal(new TouchTyped("U3.13", "GND", Beep: true), TouchTyped.Read("beep", Held).Value);
        Assert.Equal(new TouchTyped("U3.13", "GND", Beep: false), TouchTyped.Read("no beep", Held).Value);
        Assert.Equal(new TouchTyped("U3.14", "GND", Open: true), TouchTyped.Read("U3.14 open", Held).Value);
    }

    [Fact]
    public void What_a_bare_number_means_can_be_said()
    {
        Assert.Equal(1.8, TouchTyped.Read("1.8", Held, MeterMode.Volts).Value.Volts);
        Assert.Equal(470, TouchTyped.Read("470 Ω", Held, MeterMode.Volts).Value.Ohms);
        Assert.Equal("Is \"0,3\" ohms or volts? Write the unit, or choose what a bare number means.", TouchTyped.Read("0,3", Held, MeterMode.Ask).Faults[0].Say);
        Assert.Equal(2200, TouchTyped.Read("2k2", Held, MeterMode.Ask).Value.Ohms);
    }

    [Fact]
    public void A_rails_name_is_a_point_and_behind_one_point_it_is_asked_about()
    {
        Assert.Equal(new TouchTyped("U2.4", "3V3", Ohms: 0.3), TouchTyped.Read("U2.4 3V3 0.3").Value);
        Assert.Equal(new TouchTyped("5V", "GND", Open: true), TouchTyped.Read("5V GND open").Value);
        Assert.Equal(3.3, TouchTyped.Read("U2.4 GND 3V3").Value.Volts!.Value, 12);
        Assert.Equal("Is \"3V3\" a rail's name or a voltage? Write a voltage as 3.3 V; behind a rail's name the reading is missing.", TouchTyped.Read("U2.4 3V3", Held).Faults[0].Say);
    }

    [Theory]
    [InlineData("", "Type two points and what the meter showed: U3.13 GND beep.")]
    [InlineData("U3.13 GND", "What did the meter show for U3.13 – GND? Add beep, no beep, open, ohms or volts.")]
    [InlineData("beep", "Which points? There is no pair before this reading that could stay: type both.")]
    [InlineData("U3.13 beep", "Only one point is there, and no pair before it whose second point could stay: type both.")]
    [InlineData("U3.13 GND 3..4 V", "\"3..4 V\" is a range; a meter shows one value: write 3.3 V ± 0.1.")]
    [InlineData("U3.13 GND 3 mm", "\"3 mm\" is neither ohms nor volts.")]
    public void What_is_missing_is_said(string typed, string says) => Assert.Equal(says, TouchTyped.Read(typed).Faults[0].Say);

    [Fact]
    public void A_decimal_comma_that_could_part_thousands_is_asked_about_until_it_is_settled()
    {
        Assert.Contains("1.500 or 1500?", Normal(TouchTyped.Read("U3.13 GND 1,500").Faults[0].Say), StringComparison.Ordinal);
        Assert.Equal(1.5, TouchTyped.Read("U3.13 GND 1,500", mark: DecimalMark.Comma).Value.Ohms);
    }

    // The readers shorten 1.500 to 1.5 in the question; either tells the same.
    private static string Normal(string says) => says.Replace(" 1.5 or", " 1.500 or", StringComparison.Ordinal);
}
