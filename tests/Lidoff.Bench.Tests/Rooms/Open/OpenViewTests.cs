using Lidoff.Bench.Rooms.Open;
using Lidoff.Bench.Tests.Looking;

namespace Lidoff.Bench.Tests.Rooms.Open;

public sealed class OpenViewTests : IDisposable
{
    private readonly FakeBench bench = new();

    [Fact]
    public void Masses_are_held_against_the_whole()
    {
        var view = View(
            """{"kind":"specimen","specimen":"A","mass_g":21.4,"u_g":0.03}""",
            """{"kind":"mass","specimen":"A","spot":"B1","g":3.6,"u_g":0.01}""",
            """{"kind":"mass","specimen":"A","spot":"B1","g":3.61,"u_g":0.01}""",
            """{"kind":"mass","specimen":"A","spot":"CASE","g":10,"u_g":0.04}""");
        var sum = Assert.Single(view.Sums);
        Assert.Equal(2, sum.Parts);
        // By hand: 21.4 - 3.61 - 10 = 7.79; sqrt(0.03² + 0.01² + 0.04²) = 0.05099 (JCGM 100:2008, 5.1.2: independent inputs).
        Assert.Equal(7.79, sum.MissingG!.Value, 9);
        Assert.Equal("7.790 ± 0.051 g of 21.4 g was not weighed yet, or was lost.", sum.Say);
    }

    // By hand: two readings of ± 0.01 g differ by ± 0.0141 g (JCGM 100:2008, 5.1.2); within twice that, 0.0283 g, they agree (6.3.3: about 95 %).
    [Theory]
    [InlineData(21.372, "The parts add up to the whole, 21.4 g, within what the scales can tell (± 0.014 g).")]
    [InlineData(21.371, "0.029 ± 0.014 g of 21.4 g was not weighed yet, or was lost.")]
    [InlineData(21.429, "The parts weigh 0.029 ± 0.014 g more than the whole: something was weighed twice, or gained something.")]
    [InlineData(21.38, "The parts add up to the whole, 21.4 g, within what the scales can tell (± 0.014 g).")]
    [InlineData(21.9, "The parts weigh 0.500 ± 0.014 g more than the whole: something was weighed twice, or gained something.")]
    public void A_sum_that_closes_or_is_too_large_is_said(double part, string says) => Assert.Equal(says, Assert.Single(View(
        """{"kind":"mass","g":21.4}""",
        $$"""{"kind":"mass","spot":"ALL","g":{{part.ToString(System.Globalization.CultureInfo.InvariantCulture)}}}""").Sums).Say);

    [Fact]
    public void A_mass_stands_beside_the_step_it_was_said_to_be_weighed_at_and_beside_no_other()
    {
        var view = View(
            """{"kind":"step","specimen":"A","does":"took out the cell"}""",
            """{"kind":"mass","specimen":"A","spot":"B1","g":3.61,"target_line":1}""",
            """{"kind":"mass","specimen":"A","spot":"CASE","g":11.5}""",
            """{"kind":"step","specimen":"A","does":"lifted the board"}""");
        Assert.Equal(["B1 3.61 g"], view.Steps[0].Weighed);
        Assert.Empty(view.Steps[1].Weighed);
        Assert.Equal([view.Steps[0].Entry, null], view.Masses.Select(mass => mass.Step));
    }

    [Fact]
    public void What_is_put_right_keeps_its_place_its_time_and_what_was_weighed_at_it()
    {
        var before = View(
            """{"kind":"step","does":"took out the cel"}""",
            """{"kind":"mass","spot":"B1","g":36.1,"target_line":1}""",
            """{"kind":"step","does":"lifted the board"}""");
        var after = View(
            """{"kind":"step","does":"took out the cell"}""",
            $$"""{"kind":"supersede","target":"{{before.Steps[0].Entry.Hex}}","by_line":1}""",
            $$"""{"kind":"mass","spot":"B1","g":3.61,"target":"{{before.Steps[0].Entry.Hex}}"}""",
            $$"""{"kind":"supersede","target":"{{before.Masses[0].Noted.Entry.Hex}}","by_line":3}""");
        Assert.Equal([("took out the cell", before.Steps[0].At), ("lifted the board", before.Steps[1].At)], after.Steps.Select(step => (step.Step.Does, step.At)));
        Assert.Equal(["B1 3.61 g"], after.Steps[0].Weighed);
        Assert.Equal("lifted the board", after.Resume.Card.InHand!.What);
    }

    [Fact]
    public void A_plan_stays_until_a_step_carries_it_out_or_it_is_dropped()
    {
        var view = View(
            """{"kind":"plan","plan":"P1","does":"cut the seam","act":"cut","destroys":"the seal","record_first":["mass:whole","picture"],"recorded":["picture"]}""",
            """{"kind":"plan","plan":"P2","does":"lift the lid","after":["P1"]}""",
            """{"kind":"plan","plan":"P3","does":"nothing"}""",
            """{"kind":"plan","plan":"P3","dropped":true}""");
        Assert.Equal(["P1", "P2"], view.Plans.Select(plan => plan.Plan.Plan));
        Assert.Equal(["mass:whole"], view.Plans[0].NotRecorded);
        Assert.Equal(["P1"], view.Plans[1].Waits);
        Assert.Equal("P4", view.NextPlan);
        Assert.Equal("P1", view.Resume.Card.Irreversible!.Plan.Plan);
        var after = View("""{"kind":"step","does":"cut the seam","plan":"P1"}""");
        Assert.Equal(["P2"], after.Plans.Select(plan => plan.Plan.Plan));
        Assert.Empty(after.Plans[0].Waits);
        Assert.Null(after.Resume.Card.Irreversible);
    }

    [Fact]
    public void What_was_weighed_already_needs_no_tick()
    {
        var plan = Assert.Single(View(
            """{"kind":"plan","plan":"P1","does":"cut the seam","destroys":"the seal","record_first":["mass:whole","mass:CASE","picture of the seam"]}""",
            """{"kind":"specimen","specimen":"A","mass_g":21.4}""").Plans);
        Assert.Equal(["mass:CASE", "picture of the seam"], plan.NotRecorded);
        Assert.Equal(["picture of the seam"], View("""{"kind":"mass","spot":"CASE","g":9}""").Plans[0].NotRecorded);
    }

    [Fact]
    public void The_last_word_on_the_cell_counts_and_older_cautions_stay_until_they_are_answered()
    {
        var cells = View(
            """{"kind":"cell","specimen":"A","spot":"B1","volts":0.1}""",
            """{"kind":"cell","specimen":"A","connected":true}""",
            """{"kind":"cell","specimen":"B","connected":true}""",
            """{"kind":"cell","specimen":"A","connected":false}""").Resume.Cells;
        Assert.Equal(2, cells.Count);
        Assert.Equal(("A", "B1", false), (cells[0].Specimen, cells[0].Spot, cells[0].Connected));
        Assert.Equal("0.100 ± 0.010 V", cells[0].Volts);
        Assert.Contains("protection board", Assert.Single(cells[0].Cautions), StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_in_hand_is_told_to_whoever_comes_back()
    {
        var resume = View("""{"kind":"pause","in_hand":"the flat cable","next":"picture the back","checked":["heat-off"]}""").Resume;
        Assert.Equal(("the flat cable", "picture the back", true), (resume.Card.InHand!.What, resume.Card.InHand.Next, resume.Card.InHand.Said));
    }

    [Fact]
    public void Views_of_one_state_are_equal() => Assert.Equal(View("""{"kind":"step","does":"looked"}""", """{"kind":"mass","g":2}"""), View());

    public void Dispose() => bench.Dispose();

    private OpenView View(params string[] lines)
    {
        bench.Set("d", "", lines);
        return bench.View("d", OpenView.Of)!;
    }
}
