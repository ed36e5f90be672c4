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

    // Beepers differ from 10 to 75 Ω: one that stays silent may sit across what makes another beep.
    [Fact]
    public void A_silent_beeper_only_contradicts_a_chain_that_must_be_shorter_than_its_threshold()
    {
        dossier.Note("""{"kind":"touch","a":"U1.1","b":"U2.1","beep":true,"threshold_ohm":40}""", """{"kind":"touch","a":"U1.1","b":"U2.1","beep":false,"threshold_ohm":20}""");
        Assert.Empty(Book.Contradictions);
        dossier.Note("""{"kind":"touch","a":"U2.1","b":"U1.1","beep":false,"threshold_ohm":40}""");
        Assert.Equal("U2.1 and U1.1 do not beep, yet they are one net: U1.1 and U2.1 beep (below 40 Ω).", Assert.Single(Book.Contradictions).Say);
    }

    [Fact]
    public void Two_names_for_one_net_are_said()
    {
        dossier.Note("""{"kind":"net","net":"VBAT","points":["J1.1"]}""", """{"kind":"net","net":"VSYS","points":["U2.1"]}""", """{"kind":"touch","a":"J1.1","b":"U2.1","beep":true}""");
        Assert.Equal("VBAT and VSYS were drawn as two nets, yet they are one: J1.1 and U2.1 beep.", Assert.Single(Book.Contradictions).Say);
        Assert.Equal(["VBAT", "VSYS"], Book.Nets[0].Names);
    }

    // Being one net is an equivalence: whatever the order of the touches, the same nets, each point on one at most.
    [Fact]
    public void Nets_do_not_depend_on_the_order_of_touches() => Gen.Select(Gen.Int[1, 12], Gen.Int[1, 12]).Where(pair => pair.Item1 != pair.Item2).List[0, 14].Sample(
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
            Assert.All(touches, touch => Assert.Equal(one.NetOf(new($"U{touch.Item1}.1"))?.Name, one.NetOf(new($"U{touch.Item2}.1"))?.Name));
        },
        iter: 200);
}
