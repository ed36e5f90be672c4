using Lidoff.Bench.Rooms.Trace.Typed;
using Lidoff.Tracing.Kinds;

namespace Lidoff.Bench.Tests.Rooms.Trace;

/// <summary>Nets, rails and pads on one line; the grammar is ours.</summary>
public sealed class TypedLineTests
{
    [Theory]
    [InlineData("VSYS: U3.5 C4.1 because the track is seen")]
    [InlineData("VSYS = U3.5, C4.1, U3.5 because the track is seen")]
    [InlineData("VSYS U3.5;C4.1 because the track is seen")]
    public void A_net(string typed) => Assert.Equal(new NetTyped("VSYS", ["U3.5", "C4.1"], "the track is seen"), NetTyped.Read(typed).Value);

    [Fact]
    public void A_net_without_points_is_asked_about()
    {
        Assert.Equal("Which points are on VSYS? Type them behind its name: VSYS: U3.5 C4.1.", NetTyped.Read("VSYS:").Faults[0].Say);
        Assert.Equal("Type the net's name and its points: VSYS: U3.5 C4.1.", NetTyped.Read("").Faults[0].Say);
    }

    [Fact]
    public void A_rail_in_full_and_in_part()
    {
        var full = RailTyped.Read("VSYS 3,7 V ± 0,02 from U4 to U1, U2 net VSYS because measured at C4").Value;
        Assert.Equal(new RailTyped("VSYS", 3.7, 0.02, "U4", ["U1", "U2"], "VSYS", "measured at C4"), full);
        Assert.Equal(new RailTyped("VBAT", null, null, "", [], "", ""), RailTyped.Read("VBAT").Value);
        Assert.Equal("VSYS 3.7 V ± 0.02 from U4 to U1 U2 net VSYS because measured at C4", RailTyped.Typed(new RailDrawn("VSYS", 3.7, 0.02, "U4", ["U1", "U2"], "VSYS", "measured at C4", false)));
    }

    [Fact]
    public void A_rail_tells_each_fault() => Assert.Equal(
        ["\"high\" does not begin with a number.", "Behind \"from\" stands one name.", "Behind \"net\" stands one name."],
        RailTyped.Read("VSYS high from U4 U5 to U1 net").Faults.Select(fault => fault.Say));

    [Fact]
    public void A_pad()
    {
        Assert.Equal(new PadTyped(new("U3.13"), "VDD", "power_in", "top"), PadTyped.Read("U3.13 VDD POWER_IN Top").Value);
        Assert.Equal(new PadTyped(new("TP5"), "reset line", "", "bottom"), PadTyped.Read("TP5 reset line bottom").Value);
    }

    [Theory]
    [InlineData("U3.13", "U3.14")]
    [InlineData("TP9", "TP10")]
    [InlineData("J1.A4", "J1.A5")]
    [InlineData("GND", "")]
    public void The_next_pad_of_a_row_follows_by_itself(string typed, string next) => Assert.Equal(next, PadTyped.Read(typed).Value.Next());
}
