using Lidoff.Weighing.Quarrels;
using Bench = Lidoff.Weighing.Tests.Modelling.Bench;

namespace Lidoff.Weighing.Tests.Quarrels;

/// <summary>Touches, nets and rails that cannot all be true. What meters do is common practice, no source, where no other is named.</summary>
public sealed class CircuitQuarrelTests
{
    private static IReadOnlyList<Quarrel> Of(params string[] lines)
    {
        using var bench = new Bench();
        bench.Note(lines);
        return QuarrelBook.Find(bench.View, bench.Model);
    }

    [Fact]
    public void A_pair_that_beeps_and_does_not_quarrels_and_says_on_which_condition()
    {
        using var bench = new Bench();
        var noted = bench.Note("""{"kind":"touch","a":"BT1.1","b":"C1.1","beep":true}""", """{"kind":"touch","a":"C1.1","b":"BT1.1","beep":false}""");
        var quarrel = Assert.Single(QuarrelBook.Find(bench.View, bench.Model));
        Assert.Equal(("touches apart", "BT1.1 and C1.1 cannot beep and stay silent, with one meter and nothing changed between."), (quarrel.Rule, quarrel.Say));
        Assert.Contains("BT1.1 and C1.1 once more", quarrel.Settle, StringComparison.Ordinal);
        Assert.Equal(noted.Select(each => each.Id).Order(), quarrel.Members);
        bench.Note($$"""{"kind":"undo","target":"{{noted[1].Id.Hex}}"}""");
        Assert.Empty(QuarrelBook.Find(bench.View, bench.Model));
    }

    [Theory]
    [InlineData("""{"kind":"touch","a":"TP1","b":"TP2","ohms":0.3}""", """{"kind":"touch","a":"TP1","b":"TP2","open":true}""", true)]
    [InlineData("""{"kind":"touch","a":"TP1","b":"TP2","ohms":47}""", """{"kind":"touch","a":"TP1","b":"TP2","open":true}""", true)]
    [InlineData("""{"kind":"touch","a":"TP1","b":"TP2","beep":true}""", """{"kind":"touch","a":"TP1","b":"TP2","ohms":300}""", true)]
    // "Open" on a meter's low range, and what a semiconductor or a filling capacitor shows one way and the other.
    [InlineData("""{"kind":"touch","a":"TP1","b":"TP2","ohms":2200}""", """{"kind":"touch","a":"TP2","b":"TP1","open":true}""", false)]
    [InlineData("""{"kind":"touch","a":"TP1","b":"TP2","ohms":2200}""", """{"kind":"touch","a":"TP2","b":"TP1","ohms":4700}""", false)]
    // 30 Ω: one meter beeps below 40, another below 10.
    [InlineData("""{"kind":"touch","a":"TP1","b":"TP2","beep":true,"threshold_ohm":40}""", """{"kind":"touch","a":"TP1","b":"TP2","beep":false,"threshold_ohm":10}""", false)]
    [InlineData("""{"kind":"touch","a":"TP1","b":"TP2","beep":true,"threshold_ohm":10}""", """{"kind":"touch","a":"TP1","b":"TP2","beep":false,"threshold_ohm":40}""", true)]
    [InlineData("""{"kind":"touch","a":"TP1","b":"TP2","ohms":30}""", """{"kind":"touch","a":"TP1","b":"TP2","beep":false}""", false)]
    // A meter measures ohms with less than its own volts: with a charged capacitor it reads nonsense, and says so by the volts.
    [InlineData("""{"kind":"touch","a":"TP1","b":"TP2","beep":true,"volts":1.2}""", """{"kind":"touch","a":"TP1","b":"TP2","open":true}""", false)]
    [InlineData("""{"kind":"touch","a":"TP1","b":"TP2","beep":true}""", """{"kind":"touch","a":"TP1","b":"TP3","beep":false}""", false)]
    public void Resistances_of_one_pair_quarrel_where_no_resistance_fits_both(string first, string second, bool quarrels) => Assert.Equal(quarrels, Of(first, second).Count > 0);

    [Fact]
    public void A_beep_of_one_specimen_and_none_of_another_or_after_a_cut_may_both_be_true()
    {
        Assert.Empty(Of("""{"kind":"touch","specimen":"A","a":"TP1","b":"TP2","beep":true}""", """{"kind":"touch","specimen":"B","a":"TP1","b":"TP2","beep":false}"""));
        Assert.Empty(Of("""{"kind":"touch","specimen":"A","a":"TP1","b":"TP2","ohms":0.2}""", """{"kind":"touch","specimen":"B","a":"TP1","b":"TP2","open":true}"""));
        Assert.Empty(Of("""{"kind":"touch","a":"TP1","b":"TP2","beep":true}""", """{"kind":"step","does":"cut the strap","act":"cut"}""", """{"kind":"touch","a":"TP1","b":"TP2","beep":false}"""));
        Assert.Single(Of("""{"kind":"touch","a":"TP1","b":"TP2","beep":true}""", """{"kind":"step","does":"took a picture","act":"look"}""", """{"kind":"touch","a":"TP1","b":"TP2","beep":false}"""));
    }

    [Fact]
    public void Points_that_a_person_drew_as_one_net_and_a_touch_that_finds_them_apart_quarrel_also_beside_a_beep()
    {
        var drawn = """{"kind":"net","net":"OUT","points":["U1.13","U4.1"],"why":"the track is seen"}""";
        var alone = Assert.Single(Of(drawn, """{"kind":"touch","a":"U4.1","b":"U1.13","beep":false}"""));
        Assert.Equal("U4.1 and U1.13 do not beep, yet they are one net: OUT was drawn by hand: the track is seen.", alone.Say);
        // A beep between the two must not hide the net from its quarrel: it was so once.
        var both = Of("""{"kind":"touch","a":"U4.1","b":"U1.13","beep":true}""", drawn, """{"kind":"touch","a":"U4.1","b":"U1.13","beep":false}""");
        Assert.Equal(["one net and apart", "touches apart"], both.Select(quarrel => quarrel.Rule).Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData(1.9, 2.5, "", true)]
    [InlineData(1.80, 1.83, "", false)]
    // Off, or fed back through a diode: a state of the device.
    [InlineData(1.8, 0.0, "", false)]
    [InlineData(1.8, 0.4, "", false)]
    // A line that signals is high now and low then; a cell was charged.
    [InlineData(1.2, 1.8, """{"kind":"pad","spot":"U4","pad":"1","role":"output"}""", false)]
    [InlineData(3.6, 4.1, """{"kind":"cell","spot":"U4","volts":3.9}""", false)]
    [InlineData(3.6, 12.0, """{"kind":"cell","spot":"U4","volts":3.9}""", true)]
    public void Two_voltages_of_one_pair_quarrel_where_no_state_explains_them(double one, double other, string more, bool quarrels)
    {
        List<string> lines = [Volts("U4.1", "GND", one), Volts("U4.1", "GND", other)];
        if (more.Length > 0) lines.Insert(0, more);
        Assert.Equal(quarrels, Of([.. lines]).Any(quarrel => quarrel.Rule == "volts apart"));
    }

    [Fact]
    public void Voltages_with_the_leads_swapped_are_one_and_their_quarrel_names_the_state()
    {
        Assert.Empty(Of(Volts("U4.1", "C1.1", 1.8), Volts("C1.1", "U4.1", -1.8)));
        var quarrel = Assert.Single(Of("""{"kind":"touch","a":"U4.1","b":"GND","volts":1.9,"u_v":0.02}""", """{"kind":"touch","a":"U4.1","b":"GND","volts":2.5,"u_v":0.02}"""));
        Assert.Equal("U4.1 against GND cannot be 1.900 ± 0.020 V and 2.500 ± 0.020 V in one state of the device.", quarrel.Say);
        Assert.Empty(Of(Volts("U4.1", "GND", 1.9), """{"kind":"cell","connected":false}""", Volts("U4.1", "GND", 2.5)));
    }

    // By hand: 0.7 V apart, and four times the root of 0.02² + 0.02² is 0.113 V.
    [Theory]
    [InlineData("U4.1", "GND", 2.50, true)]
    [InlineData("GND", "U4.1", -2.50, true)]
    [InlineData("U4.1", "GND", 1.85, false)]
    [InlineData("U4.1", "GND", 0.1, false)]
    // 1.8 V less 3.0 V is -1.2 V.
    [InlineData("U4.1", "C1.1", 1.8, true)]
    [InlineData("U4.1", "C1.1", -1.2, false)]
    [InlineData("U9.1", "GND", 2.50, false)]
    public void A_voltage_on_a_rails_net_quarrels_with_the_rail(string a, string b, double volts, bool quarrels)
    {
        var found = Of(
            """{"kind":"net","net":"OUT","points":["U1.13","U4.1"]}""",
            """{"kind":"net","net":"VBAT","points":["J1.1","C1.1"]}""",
            """{"kind":"rail","rail":"VDD","v":1.8,"u_v":0.02,"net":"OUT"}""",
            """{"kind":"rail","rail":"VBAT","v":3.0,"u_v":0.02,"net":"VBAT"}""",
            FormattableString.Invariant($$"""{"kind":"touch","a":"{{a}}","b":"{{b}}","volts":{{volts}},"u_v":0.02}"""));
        Assert.Equal(quarrels, found.Any(quarrel => quarrel.Rule == "volts against a rail"));
        if (a == "U4.1" && b == "GND" && volts == 2.50)
            Assert.Equal("U4.1 against GND cannot be 2.500 ± 0.020 V where VDD is 1.800 ± 0.020 V, in the state in which the rail is up.", Assert.Single(found).Say);
    }

    [Fact]
    public void A_rail_of_a_cell_is_as_full_as_the_cell_and_a_dropped_rail_says_nothing()
    {
        string[] rail = ["""{"kind":"cell","spot":"BT1","volts":3.0}""", """{"kind":"net","net":"VBAT","points":["BT1.1","C1.1"]}""", """{"kind":"rail","rail":"VBAT","v":3.0,"u_v":0.02,"net":"VBAT","from":"BT1"}"""];
        Assert.Empty(Of([.. rail, Volts("C1.1", "GND", 4.1)]));
        Assert.Single(Of([.. rail, Volts("C1.1", "GND", 5.2)]));
        Assert.Empty(Of([.. rail, """{"kind":"rail","rail":"VBAT","dropped":true}""", Volts("C1.1", "GND", 5.2)]));
    }

    private static string Volts(string a, string b, double volts) => FormattableString.Invariant($$"""{"kind":"touch","a":"{{a}}","b":"{{b}}","volts":{{volts}}}""");
}
