using Lidoff.Bench.Rooms.Trace.Typed;
using Lidoff.Numbers.Typed;

namespace Lidoff.Bench.Tests.Rooms.Trace;

public sealed class TouchPasteTests
{
    [Theory]
    [InlineData("U3.13;GND;0,3\nC4.1;GND;open")]
    [InlineData("a;b;reading\r\nU3.13;GND;0,3\r\n\r\nC4.1;GND;open\r\n")]
    [InlineData("U3.13\tGND\t0,3\nC4.1\tGND\topen")]
    [InlineData("U3.13,GND,0.3\nC4.1,GND,open")]
    [InlineData("\"U3.13\";\"GND\";\"0,3\"\n\"C4.1\";\"GND\";\"open\"")]
    [InlineData("U3.13 GND 0.3\nC4.1 GND open")]
    public void A_line_is_a_touch_however_it_is_parted(string pasted) => Assert.Equal(
        [new("U3.13", "GND", Ohms: 0.3), new("C4.1", "GND", Open: true)], TouchPaste.Read(pasted, MeterMode.Ohms, DecimalMark.Ask).Value);

    [Fact]
    public void Every_line_that_cannot_be_read_is_said_and_none_is_taken()
    {
        var faults = TouchPaste.Read("U3.13;GND;1,500\nU3.14;GND\nU3.15;GND;beep", MeterMode.Ohms, DecimalMark.Ask).Faults;
        Assert.Equal(2, faults.Count);
        Assert.StartsWith("Line 1: Is \"1,500\" 1.5", faults[0].Say, StringComparison.Ordinal);
        Assert.Equal("Line 2: a line is two points and a reading: U3.13;GND;0.3.", faults[1].Say);
        Assert.Equal(1500, TouchPaste.Read("U3.13;GND;1,500", MeterMode.Ohms, DecimalMark.Point).Value[0].Ohms);
    }

    [Fact]
    public void Commas_that_part_cells_and_decimals_are_asked_about()
    {
        var fault = Assert.Single(TouchPaste.Read("U3.13,GND,0,3", MeterMode.Ohms, DecimalMark.Ask).Faults);
        Assert.Equal("Line 1: do the commas in \"U3.13,GND,0,3\" part the cells, or is one of them a decimal comma? Part the cells by semicolons or tabs.", fault.Say);
    }

    [Fact]
    public void Nothing_and_too_much_are_said()
    {
        Assert.StartsWith("There is no touch", TouchPaste.Read(" \n ", MeterMode.Ohms, DecimalMark.Ask).Faults[0].Say, StringComparison.Ordinal);
        Assert.StartsWith("There is no touch", TouchPaste.Read("from;to;reading", MeterMode.Ohms, DecimalMark.Ask).Faults[0].Say, StringComparison.Ordinal);
        Assert.Equal("2001 lines are too many for one paste; at most 2000 are read at once.", TouchPaste.Read(string.Concat(Enumerable.Repeat("A1.1 GND beep\n", 2001)), MeterMode.Ohms, DecimalMark.Ask).Faults[0].Say);
    }
}
