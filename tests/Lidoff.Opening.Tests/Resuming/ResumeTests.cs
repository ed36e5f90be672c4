using Lidoff.Opening.Kinds;
using Lidoff.Opening.Resuming;
using Lidoff.TestSupport;

namespace Lidoff.Opening.Tests.Resuming;

public sealed class ResumeTests : IDisposable
{
    private readonly NotedDossier dossier = new(typeof(StepKind));

    public void Dispose() => dossier.Dispose();

    [Fact]
    public void An_empty_dossier_takes_the_cell_as_connected()
    {
        var card = ResumeCard.Of(dossier.View);
        Assert.Equal("Nobody noted whether the cell is connected: take it as connected until you have looked.", Assert.Single(card.Cells).Say);
        Assert.Null(card.InHand);
        Assert.Null(card.Irreversible);
        Assert.All(ClosingList.Of(dossier.View), tick => Assert.False(tick.Done));
    }

    [Fact]
    public void The_newest_sighting_of_each_specimens_cell_counts()
    {
        dossier.Note(
            """{"kind":"specimen","specimen":"A"}""",
            """{"kind":"specimen","specimen":"B"}""",
            """{"kind":"cell","specimen":"A","connected":true,"damaged":true}""",
            """{"kind":"cell","specimen":"A","connected":false}""",
            """{"kind":"cell","specimen":"A","volts":3.8}""");
        Assert.Equal(
            [
                "The cell of specimen A was disconnected when it was last noted. It was noted as damaged: read the caution before you touch it.",
                "Nobody noted whether the cell of specimen B is connected: take it as connected until you have looked.",
            ],
            ResumeCard.Of(dossier.View).Cells.Select(cell => cell.Say));
        // B's cell is not known, so the bench is not safe to leave by itself.
        Assert.False(Tick(ClosingItems.CellDisconnected).Done);
        dossier.Note("""{"kind":"cell","specimen":"B","connected":false}""");
        Assert.True(Tick(ClosingItems.CellDisconnected).Done);
    }

    // Words of the trade, from memory: what people write when a cell comes out, goes in, or is only looked at.
    [Theory]
    [InlineData("other", "cell out", true)]
    [InlineData("other", "battery unplugged", true)]
    [InlineData("pry", "unsoldered the battery leads", true)]
    [InlineData("other", "Lifted the pouch cell off its tape", true)]
    [InlineData("other", "plugged the cell back in", true)]
    [InlineData("cell", "taped the leads", true)]
    [InlineData("other", "excellent outline, no battery marks", false)]
    [InlineData("look", "photographed the cell", false)]
    [InlineData("other", "lifted the board out", false)]
    public void After_a_step_that_may_have_changed_it_the_cell_is_asked_for(string act, string does, bool asked)
    {
        dossier.Note("""{"kind":"specimen","specimen":"A"}""", """{"kind":"cell","specimen":"A","connected":true}""", $$"""{"kind":"step","specimen":"A","act":"{{act}}","does":"{{does}}"}""");
        var cell = Assert.Single(ResumeCard.Of(dossier.View).Cells);
        Assert.Equal((asked ? null : true, asked ? does : ""), (cell.Connected, cell.Since));
        if (asked) Assert.Equal($"Nobody noted how the cell of specimen A stands since \"{does}\": take it as connected until you have looked.", cell.Say);
        dossier.Note("""{"kind":"cell","specimen":"A","connected":false}""");
        cell = Assert.Single(ResumeCard.Of(dossier.View).Cells);
        Assert.Equal((false, ""), (cell.Connected, cell.Since));
    }

    [Fact]
    public void A_step_put_right_later_is_still_the_step_it_was()
    {
        var step = dossier.Note("""{"kind":"step","does":"cell out"}""")[0];
        dossier.Note("""{"kind":"cell","connected":false}""", """{"kind":"step","does":"lifted the board"}""", """{"kind":"pause","in_hand":"the board","checked":["heat-off"]}""");
        dossier.Note("""{"kind":"step","does":"cell out, leads taped"}""", $$"""{"kind":"supersede","target":"{{step.Id.Hex}}","by_line":1}""");
        var card = ResumeCard.Of(dossier.View);
        Assert.False(Assert.Single(card.Cells).Connected);
        Assert.Equal("the board", card.InHand!.What);
        Assert.True(Tick("heat-off").Done);
    }

    [Fact]
    public void What_was_in_hand_is_what_was_said_last_or_else_the_last_step()
    {
        dossier.Note("""{"kind":"step","does":"cut the seam"}""");
        Assert.Equal(("cut the seam", false), (ResumeCard.Of(dossier.View).InHand!.What, ResumeCard.Of(dossier.View).InHand!.Said));
        var pause = dossier.Note("""{"kind":"pause","in_hand":"the lower shell","next":"lift the cell","note":"glue soft"}""")[0];
        var hand = ResumeCard.Of(dossier.View).InHand!;
        Assert.Equal(("the lower shell", "lift the cell", "glue soft", true, pause.Id, pause.Entry.At), (hand.What, hand.Next, hand.Note, hand.Said, hand.Entry, hand.At));
        dossier.Note("""{"kind":"step","does":"lifted the cell"}""");
        Assert.Equal("lifted the cell", ResumeCard.Of(dossier.View).InHand!.What);
    }

    [Fact]
    public void The_next_irreversible_act_is_the_first_open_plan_that_destroys_something()
    {
        dossier.Note(
            """{"kind":"plan","plan":"P1","does":"weigh the whole"}""",
            """{"kind":"plan","plan":"P2","does":"lift the coating","act":"coating","destroys":"the coating's edge","after":["P10"]}""",
            """{"kind":"plan","plan":"P10","does":"cut the seam","act":"cut","destroys":"the seal","record_first":["mass:CASE","leak test"],"after":["P1"]}""");
        Assert.Equal(["P1", "P10", "P2"], PlanBook.Of(dossier.View).Select(step => step.Plan.Plan));
        Assert.Equal([PlanState.Open, PlanState.Waiting, PlanState.Waiting], PlanBook.Of(dossier.View).Select(step => step.State));
        Assert.Equal("P10, cut the seam: destroys the seal. Record first: mass:CASE; leak test.", ResumeCard.Of(dossier.View).IrreversibleSays);
        // A reference is recorded when it has a value; words when a person says so.
        dossier.Note("""{"kind":"step","does":"weighed","plan":"P1"}""");
        Assert.Equal("P10, cut the seam: destroys the seal. Record first: leak test.", ResumeCard.Of(dossier.View, reference => reference == "mass:CASE").IrreversibleSays);
        dossier.Note("""{"kind":"plan","plan":"P10","does":"cut the seam","destroys":"the seal","record_first":["leak test"],"recorded":["leak test"]}""");
        Assert.Equal("P10, cut the seam: destroys the seal. What was to be recorded first is recorded.", ResumeCard.Of(dossier.View).IrreversibleSays);
        dossier.Note("""{"kind":"step","does":"cut","plan":"P10"}""", """{"kind":"plan","plan":"P2","dropped":true}""");
        Assert.Equal("", ResumeCard.Of(dossier.View).IrreversibleSays);
        Assert.Equal(["P1", "P10"], PlanBook.Of(dossier.View).Select(step => step.Plan.Plan));
    }

    [Fact]
    public void Plans_that_wait_for_each_other_are_all_kept()
    {
        dossier.Note("""{"kind":"plan","plan":"P1","does":"a","after":["P2"]}""", """{"kind":"plan","plan":"P2","does":"b","after":["P1"]}""");
        Assert.Equal(["P1", "P2"], PlanBook.Of(dossier.View).Select(step => step.Plan.Plan));
    }

    [Fact]
    public void Ticks_hold_until_somebody_works_on()
    {
        dossier.Note("""{"kind":"pause","in_hand":"lower shell","checked":["heat-off","blades-covered"]}""");
        Assert.Equal(["heat-off", "blades-covered", "in-hand-noted"], ClosingList.Of(dossier.View).Where(tick => tick.Done).Select(tick => tick.Item.Key));
        dossier.Note("""{"kind":"step","does":"warmed the seam","act":"heat"}""");
        Assert.All(ClosingList.Of(dossier.View), tick => Assert.False(tick.Done));
    }

    [Fact]
    public void A_connected_cell_is_not_ticked_off_by_silence()
    {
        dossier.Note("""{"kind":"cell","connected":true}""", """{"kind":"pause","checked":["heat-off"]}""");
        Assert.Equal((false, "The cell was connected when it was last noted."), (Tick(ClosingItems.CellDisconnected).Done, Tick(ClosingItems.CellDisconnected).Because));
        dossier.Note("""{"kind":"pause","checked":["cell-disconnected"]}""");
        Assert.True(Tick(ClosingItems.CellDisconnected).Done);
    }

    private ClosingTick Tick(string key) => ClosingList.Of(dossier.View).Single(tick => tick.Item.Key == key);
}
