using CsCheck;
using Lidoff.TestSupport;
using Lidoff.Tracing.Kinds;
using Lidoff.Tracing.Nets;

namespace Lidoff.Tracing.Tests.Nets;

public sealed class NetBookTests : IDisposable
{
    private readonly NotedDossier dossier = new(typeof(TouchKind));

    public void Dispose() => dossier.Dispose();

    private NetBook Book => NetBook.Of(dossier.View);

    [Fact]
    public void Touches_join_points_and_named_points_name_nets()
    {
        dossier.Note(
            """{"kind":"touch","a":"U3.13","b":"GND","beep":true,"threshold_ohm":40}""",
            """{"kind":"touch","a":"C4.1","b":"U3.13","ohms":0.4}""",
            """{"kind":"touch","a":"U1.2","b":"U1.10","beep":true}""",
            """{"kind":"touch","a":"R1.1","b":"R1.2","ohms":4700}""");
        Assert.Equal(["GND: C4.1, GND, U3.13", "net of U1.2: U1.2, U1.10"], Book.Nets.Select(net => $"{net.Name}: {string.Join(", ", net.Points.Select(point => point.Text))}"));
        Assert.All(Book.Nets, net => Assert.Equal(NetGrade.Touched, net.Grade));
        Assert.Equal(["R1.1", "R1.2"], Book.Alone.Select(point => point.Text));
        Assert.Equal("GND", Book.NetOf(new("C4.1"))?.Name);
        Assert.Null(Book.NetOf(new("R1.1")));
        Assert.Equal("C4.1 to U3.13 reads 0.4 Ω", Book.Named("GND")!.Links[1].Say);
        Assert.Empty(Book.Contradictions);
    }

    // Where the lines are drawn is common practice at the bench, no source: leads, tips and a thin track make up to 2 Ω together; beepers
    // sound below 10 to 75 Ω, and one that sounds below 100 Ω still means a wire; no track makes a kilohm; what is left in a capacitor
    // moves a reading of ohms once it is more than some tens of millivolts.
    [Theory]
    [InlineData("\"ohms\":2", true, false)]
    [InlineData("\"ohms\":2.01", false, false)]
    [InlineData("\"ohms\":999", false, false)]
    [InlineData("\"ohms\":1000", false, true)]
    [InlineData("\"beep\":true,\"threshold_ohm\":100", true, false)]
    [InlineData("\"beep\":true,\"threshold_ohm\":101", false, false)]
    [InlineData("\"beep\":true", true, false)]
    [InlineData("\"beep\":false", false, true)]
    [InlineData("\"open\":true", false, true)]
    [InlineData("\"ohms\":0.3,\"volts\":0.02", true, false)]
    [InlineData("\"ohms\":0.3,\"volts\":-0.021", false, false)]
    [InlineData("\"ohms\":4700,\"volts\":0.021", false, false)]
    [InlineData("\"beep\":true,\"volts\":0.5", false, false)]
    // A silent beeper that showed ohms is told by its ohms.
    [InlineData("\"beep\":false,\"ohms\":30,\"threshold_ohm\":20", false, false)]
    public void What_joins_and_what_holds_apart_is_what_meters_mean(string reading, bool joins, bool apart)
    {
        dossier.Note($$"""{"kind":"touch","a":"U1.1","b":"U2.1",{{reading}}}""");
        Assert.Equal((joins, apart), (Book.Nets.Count == 1, Book.Apart.Count == 1));
    }

    [Theory]
    [InlineData("""{"kind":"touch","a":"U1.1","b":"U2.1","beep":true,"threshold_ohm":500}""")]
    [InlineData("""{"kind":"touch","a":"U1.1","b":"U2.1","ohms":47}""")]
    [InlineData("""{"kind":"touch","a":"U1.1","b":"U2.1","volts":0.001}""")]
    [InlineData("""{"kind":"touch","a":"U1.1","b":"U2.1","ohms":0.3,"volts":0.4}""")]
    public void What_may_pass_through_a_part_or_was_measured_under_voltage_joins_nothing_and_holds_nothing_apart(string line)
    {
        dossier.Note(line);
        Assert.Empty(Book.Nets);
        Assert.Empty(Book.Apart);
        Assert.Equal(2, Book.Alone.Count);
    }

    [Fact]
    public void Counted_ground_pins_and_pads_take_part()
    {
        dossier.Note("""{"kind":"pins","spot":"U1","ground":[31,45]}""", """{"kind":"pad","spot":"U1","pad":"7","name":"SDA"}""");
        Assert.Equal(["GND", "U1.31", "U1.45"], Assert.Single(Book.Nets).Points.Select(point => point.Text));
        Assert.Equal(["U1.7"], Book.Alone.Select(point => point.Text));
        Assert.Equal(["U1"], Book.Nets[0].Spots);
    }

    [Fact]
    public void A_net_drawn_by_hand_is_graded_so_until_touches_join_all_of_it()
    {
        dossier.Note("""{"kind":"net","net":"VBAT","points":["U3.13","C4.1","J1.1"],"why":"one pour"}""");
        Assert.Equal(("VBAT", NetGrade.ByHand), (Book.Nets[0].Name, Book.Nets[0].Grade));
        dossier.Note("""{"kind":"touch","a":"U3.13","b":"C4.1","beep":true}""");
        Assert.Equal(NetGrade.ByHand, Book.Nets[0].Grade);
        dossier.Note("""{"kind":"touch","a":"J1.1","b":"C4.1","beep":true}""");
        Assert.Equal(NetGrade.Touched, Book.Nets[0].Grade);
    }

    [Fact]
    public void An_open_within_a_net_is_said_with_the_shortest_chain_and_resolved_by_nobody()
    {
        var entries = dossier.Note(
            """{"kind":"touch","a":"U1.1","b":"TP1","beep":true}""",
            """{"kind":"touch","a":"TP1","b":"U2.4","beep":true}""",
            """{"kind":"touch","a":"U2.4","b":"C1.1","beep":true}""",
            """{"kind":"touch","a":"U1.1","b":"U2.4","open":true}""");
        var fight = Assert.Single(Book.Contradictions);
        Assert.Equal("U1.1 and U2.4 read open, yet they are one net: U1.1 and TP1 beep; TP1 and U2.4 beep.", fight.Say);
        Assert.Equal(new[] { entries[0].Id, entries[1].Id, entries[3].Id }.Order(), fight.Members);
        Assert.Equal(4, Assert.Single(Book.Nets).Points.Count);
    }

    // By hand: resistances in a row add up. Two links of at most 2 Ω and 1.5 Ω are at most 3.5 Ω, far below the kilohm that was read; ten beeps
    // below 100 Ω each may be a kilohm together, and eleven more than that.
    [Fact]
    public void A_reading_of_ohms_contradicts_a_chain_only_where_the_chain_must_be_shorter()
    {
        dossier.Note("""{"kind":"touch","a":"U1.1","b":"TP1","ohms":2}""", """{"kind":"touch","a":"TP1","b":"U2.1","ohms":1.5}""", """{"kind":"touch","a":"U1.1","b":"U2.1","ohms":1000}""");
        Assert.Equal("U1.1 to U2.1 reads 1000 Ω, yet they are one net: U1.1 to TP1 reads 2 Ω; TP1 to U2.1 reads 1.5 Ω.", Assert.Single(Book.Contradictions).Say);
        for (var i = 10; i < 21; i++) dossier.Note($$"""{"kind":"touch","a":"P{{i}}","b":"P{{i + 1}}","beep":true,"threshold_ohm":100}""");
        dossier.Note("""{"kind":"touch","a":"P10","b":"P20","ohms":1000}""", """{"kind":"touch","a":"P10","b":"P21","ohms":1000}""");
        Assert.Equal(["P10 to P20 reads 1000 Ω", "U1.1 to U2.1 reads 1000 Ω"], Book.Contradictions.Select(each => each.Say.Split(',')[0]));
    }

    // Beepers differ from 10 to 75 Ω (common practice, no source): one that stays silent may sit across what makes another beep.
    [Fact]
    public void A_silent_beeper_only_contradicts_a_chain_that_must_be_shorter_than_its_threshold()
    {
        dossier.Note("""{"kind":"touch","a":"U1.1","b":"U2.1","beep":true,"threshold_ohm":40}""", """{"kind":"touch","a":"U1.1","b":"U2.1","beep":false,"threshold_ohm":20}""");
        Assert.Empty(Book.Contradictions);
        dossier.Note("""{"kind":"touch","a":"U2.1","b":"U1.1","beep":false,"threshold_ohm":40}""");
        Assert.Equal("U2.1 and U1.1 do not beep, yet they are one net: U1.1 and U2.1 beep (below 40 Ω).", Assert.Single(Book.Contradictions).Say);
        Assert.True(Book.Contradictions[0].Impossible);
    }

    // Nobody noted the thresholds: the one that beeped may sound up to 75 Ω, the one that was silent may stop at 10 Ω.
    [Fact]
    public void Two_beepers_of_unknown_threshold_do_not_contradict_each_other()
    {
        dossier.Note("""{"kind":"touch","a":"U1.1","b":"U2.1","beep":true}""", """{"kind":"touch","a":"U1.1","b":"U2.1","beep":false}""");
        Assert.Empty(Book.Contradictions);
    }

    [Fact]
    public void Two_names_for_one_net_are_said()
    {
        dossier.Note("""{"kind":"net","net":"VBAT","points":["J1.1"]}""", """{"kind":"net","net":"VSYS","points":["U2.1"]}""", """{"kind":"touch","a":"J1.1","b":"U2.1","beep":true}""");
        Assert.Equal("VBAT and VSYS were drawn as two nets, yet they are one: J1.1 and U2.1 beep.", Assert.Single(Book.Contradictions).Say);
        // A jumper or a sense resistor would explain it.
        Assert.False(Book.Contradictions[0].Impossible);
        Assert.Equal(["VBAT", "VSYS"], Book.Nets[0].Names);
    }

    // Being one net is an equivalence: whatever the order of the touches, the same nets, and they are those that Warshall's closure of the
    // touches gives (S. Warshall, A Theorem on Boolean Matrices, 1962), worked out here on a table of yes and no.
    [Fact]
    public void Nets_are_the_closure_of_the_touches_in_whatever_order_they_come() => Gen.Select(Gen.Int[1, 12], Gen.Int[1, 12]).Where(pair => pair.Item1 != pair.Item2).List[0, 14].Sample(
        touches =>
        {
            using var forwards = new NotedDossier(typeof(TouchKind));
            using var backwards = new NotedDossier(typeof(TouchKind));
            var lines = touches.Select(touch => $$"""{"kind":"touch","a":"U{{touch.Item1}}.1","b":"U{{touch.Item2}}.1","beep":true}""").ToArray();
            if (lines.Length > 0) forwards.Note(lines);
            if (lines.Length > 0) backwards.Note([.. lines.Reverse()]);
            var (one, other) = (NetBook.Of(forwards.View), NetBook.Of(backwards.View));
            Assert.Equal(one.Nets.Select(net => net.Points), other.Nets.Select(net => net.Points));
            var points = one.Nets.SelectMany(net => net.Points).ToList();
            Assert.Equal(points.Distinct().Count(), points.Count);
            var joined = new bool[13, 13];
            foreach (var (a, b) in touches) joined[a, b] = joined[b, a] = true;
            for (var k = 1; k < 13; k++)
            {
                for (var i = 1; i < 13; i++)
                {
                    for (var j = 1; j < 13; j++) joined[i, j] |= joined[i, k] && joined[k, j];
                }
            }

            for (var i = 1; i < 13; i++)
            {
                for (var j = 1; j < 13; j++)
                {
                    if (i != j) Assert.Equal(joined[i, j], one.NetOf(new($"U{i}.1")) is { } net && net.Points.Contains(new($"U{j}.1")));
                }
            }
        },
        iter: 200);
}
