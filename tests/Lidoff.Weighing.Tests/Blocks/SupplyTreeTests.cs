using Lidoff.Weighing.Blocks;
using Lidoff.Weighing.Tests.Modelling;

namespace Lidoff.Weighing.Tests.Blocks;

public sealed class SupplyTreeTests : IDisposable
{
    private readonly Bench bench = new();

    public void Dispose() => bench.Dispose();

    private SupplyTree Tree => SupplyTree.Of(bench.View);

    // A pouch cell behind a charger with a power path, a converter, and two loads: the usual chain of a wearable (common practice, no source).
    private void Chain() => bench.Note(
        """{"kind":"spot","spot":"BT1","class":"cell","role":"pouch cell"}""",
        """{"kind":"rail","rail":"VBAT","v":3.7,"u_v":0.1,"from":"BT1","to":["U4"]}""",
        """{"kind":"rail","rail":"VSYS","v":3.7,"u_v":0.1,"from":"U4","to":["U2"],"net":"VSYS"}""",
        """{"kind":"rail","rail":"V18","v":1.8,"u_v":0.02,"from":"U2","to":["U1","U3"]}""");

    [Fact]
    public void Cell_charger_converter_and_loads_stand_in_their_places()
    {
        Chain();
        Assert.Equal(["BT1 Source", "U2 Converter", "U4 Converter", "U1 Load", "U3 Load"], Tree.Nodes.Select(node => $"{node.Name} {node.Sort}"));
        Assert.Equal("pouch cell", Tree.Nodes[0].Role);
        Assert.Equal(["U2>U1 V18", "U2>U3 V18", "BT1>U4 VBAT", "U4>U2 VSYS"], Tree.Feeds.Select(feed => $"{feed.From}>{feed.To} {feed.Rail}"));
        Assert.Empty(Tree.Remarks);
    }

    [Fact]
    public void A_measured_supply_is_held_against_its_rail_and_finds_a_rail_only_as_a_guess()
    {
        Chain();
        bench.Note("""{"kind":"supply","spot":"U1","v":1.802,"u_v":0.004}""", """{"kind":"supply","spot":"U9","v":1.79,"u_v":0.01}""");
        Assert.Empty(Tree.Remarks);
        var guess = Assert.Single(Tree.Feeds, feed => feed.Guess);
        Assert.Equal(("U2", "U9", "V18"), (guess.From, guess.To, guess.Rail));
        // 3.7 V is on two rails: nobody can tell which.
        bench.Note("""{"kind":"supply","spot":"U3","v":3.7,"u_v":0.01}""", """{"kind":"supply","spot":"U8","v":3.7,"u_v":0.01}""");
        Assert.Equal(["U3 reads 3.7 V at its pin, and V18 that feeds it is drawn with 1.8 V.", "U8 reads 3.7 V at its pin, and no rail that feeds it was drawn."], Tree.Remarks);
        Assert.Equal(SupplySort.Load, Tree.Nodes.Single(node => node.Name == "U8").Sort);
    }

    // Three standard uncertainties of the difference; independent ones add as squares (JCGM 100:2008, 5.1.2), by hand: 3 sqrt(0.02² + 0.015²)
    // = 0.075 V. A rail drawn without doubt holds to a twentieth: 0.09 V of 1.8 V. That three and a twentieth are the lines is ours.
    [Theory]
    [InlineData(1.874, ",\"u_v\":0.02", 0.015, true)]
    [InlineData(1.876, ",\"u_v\":0.02", 0.015, false)]
    [InlineData(1.726, ",\"u_v\":0.02", 0.015, true)]
    [InlineData(1.724, ",\"u_v\":0.02", 0.015, false)]
    [InlineData(1.889, "", 0, true)]
    [InlineData(1.891, "", 0, false)]
    [InlineData(1.711, "", 0, true)]
    [InlineData(1.709, "", 0, false)]
    public void A_voltage_fits_its_rail_within_three_standard_uncertainties(double v, string railDoubt, double u, bool fits)
    {
        bench.Note(
            $$"""{"kind":"rail","rail":"V18","v":1.8{{railDoubt}},"from":"U2","to":["U1"]}""",
            string.Create(System.Globalization.CultureInfo.InvariantCulture, $$"""{"kind":"supply","spot":"U1","v":{{v}},"u_v":{{u}}}"""));
        Assert.Equal(fits, Tree.Remarks.Count == 0);
    }

    [Fact]
    public void A_rail_of_unknown_make_is_its_own_source_and_a_dropped_one_is_gone()
    {
        bench.Note("""{"kind":"rail","rail":"VX","to":["U1"]}""", """{"kind":"rail","rail":"VY","from":"U7","to":["U1"]}""", """{"kind":"rail","rail":"VY","dropped":true}""");
        Assert.Equal(new SupplyNode("VX", SupplySort.Source, "not known what makes it", null), Tree.Nodes[0]);
        Assert.Equal(["VX", "U1"], Tree.Nodes.Select(node => node.Name));
    }

    [Fact]
    public void Parts_that_feed_each_other_are_said()
    {
        bench.Note("""{"kind":"rail","rail":"VA","from":"U1","to":["U2"]}""", """{"kind":"rail","rail":"VB","from":"U2","to":["U1"]}""");
        Assert.Equal(
            ["U1 feeds itself over other parts: one of these rails is drawn the wrong way round, or it is a charging path.", "U2 feeds itself over other parts: one of these rails is drawn the wrong way round, or it is a charging path."],
            Tree.Remarks);
    }

    [Fact]
    public void The_blocks_cite_rails_buses_and_nets_and_say_what_is_a_guess()
    {
        Chain();
        bench.Note(
            """{"kind":"spot","spot":"U1","class":"chip","role":"radio"}""",
            """{"kind":"spot","spot":"C1","class":"capacitor"}""",
            """{"kind":"spot","spot":"H1","class":"glue"}""",
            """{"kind":"bus","type":"i2c","address":"0x52","spot":"U3"}""",
            """{"kind":"touch","a":"U1.7","b":"U3.1","beep":true}""",
            """{"kind":"touch","a":"U1.8","b":"U3.2","beep":true}""",
            """{"kind":"touch","a":"U1.9","b":"C1.1","beep":true}""",
            """{"kind":"touch","a":"U1.3","b":"GND","beep":true}""",
            """{"kind":"touch","a":"U3.3","b":"GND","beep":true}""");
        var plan = BlockDiagram.Of(bench.View, spot => spot == "U1" ? "ZX52832" : "");
        Assert.Equal(["BT1", "I2C bus", "U1", "U2", "U3", "U4"], plan.Blocks.Select(block => block.Name));
        Assert.Equal(("radio", "ZX52832"), (plan.Blocks[2].Role, plan.Blocks[2].Part));
        Assert.Equal(
            ["I2C bus-U3 0x52", "U1-I2C bus ", "U1-U3 2 nets"],
            plan.Lines.Where(line => line.Sort != LineSort.Supply).Select(line => $"{line.From}-{line.To} {line.Label}"));
        Assert.Equal(["BT1-U4 VBAT 3.7 V", "U2-U1 V18 1.8 V", "U2-U3 V18 1.8 V", "U4-U2 VSYS 3.7 V"], plan.Lines.Where(line => line.Sort == LineSort.Supply).Select(line => $"{line.From}-{line.To} {line.Label}").Order(StringComparer.Ordinal));
        Assert.All(plan.Lines, line => Assert.True(line.Guess || (line.Cites.Count > 0 && line.Entries.Count > 0)));
        Assert.True(Assert.Single(plan.Lines, line => line.Guess).Sort == LineSort.Bus);
    }

    // An antenna has no pins to name: the touch is on it as a whole (common practice, no source).
    [Fact]
    public void What_is_touched_as_a_whole_has_its_line_too()
    {
        bench.Note("""{"kind":"spot","spot":"U1","class":"chip"}""", """{"kind":"spot","spot":"AE1","class":"antenna"}""", """{"kind":"touch","a":"U1.31","b":"AE1","beep":true}""");
        var line = Assert.Single(BlockDiagram.Of(bench.View).Lines);
        Assert.Equal(("AE1", "U1", LineSort.Net, "AE1"), (line.From, line.To, line.Sort, line.Label));
    }
}
