using Lidoff.Bench.Components.Layout;
using Lidoff.Bench.Data;
using Lidoff.Bench.Tests.Looking;
using Lidoff.Bench.Working;
using Lidoff.Weighing.Questions;

namespace Lidoff.Bench.Tests.Components;

/// <summary>What stands around every room: the board, the drawer, the hand that takes back.</summary>
public sealed class FrameTests : IDisposable
{
    private readonly FakeBench bench = new();
    private readonly Hand hand;
    private readonly Acts acts = new();

    public FrameTests()
    {
        Samples.Brindle(bench);
        hand = new(bench, acts, new(new() { Data = bench, Program = "x", Unguessable = b => b.Fill(1) }));
    }

    public void Dispose() => bench.Dispose();

    [Fact]
    public void The_board_answers_what_is_tied_and_names_the_next_free_question()
    {
        bench.Set("brindle", "", """{"kind":"question","question":"Q1","text":"Who is U1?","ties":["part:U1"]}""", """{"kind":"question","question":"Q2","text":"Why a lamp?"}""");
        var board = bench.View("brindle", BoardView.Of)!;
        Assert.Equal("Q3", board.NextName);
        Assert.Contains("nRF52832", board.Questions[0].Answer, StringComparison.Ordinal);
        Assert.Equal((QuestionState.Open, "open"), (board.Questions[1].State, board.Questions[1].Answer));
        Assert.Contains("reckoning:R1", board.References);
        Assert.Contains("length:U1:long side", board.References);
    }

    [Fact]
    public void The_drawer_goes_from_a_thing_to_its_entries()
    {
        var drawer = bench.View("brindle", dossier => DrawerView.Of(dossier, "length:U1:long side"))!;
        var entry = Assert.Single(drawer.Because!.Rests);
        Assert.Equal("length", entry.Title);
        Assert.Null(bench.View("brindle", dossier => DrawerView.Of(dossier, null))!.Because);
    }

    [Fact]
    public void The_overview_says_where_the_bench_was_left()
    {
        Assert.Empty(bench.View("brindle", DossierOverview.Of)!.Bench);
        bench.Set("brindle", "",
            """{"kind":"cell","spot":"BT1","connected":false}""",
            """{"kind":"plan","plan":"P1","does":"cut the seam","act":"cut","destroys":"the seal","record_first":["mass:whole"]}""",
            """{"kind":"pause","in_hand":"the lid","next":"weigh it"}""");
        var left = bench.View("brindle", DossierOverview.Of)!.Bench;
        Assert.Equal(3, left.Count);
        Assert.Equal("In hand: the lid; next: weigh it.", left[1]);
        Assert.Equal("The next act that cannot be taken back: P1, cut the seam: destroys the seal. Record first: mass:whole.", left[2]);
    }

    [Fact]
    public void The_drawer_shows_eight_quarrels_and_counts_the_rest()
    {
        // Ten lengths, each read twice 1 mm apart at ± 0.02 mm.
        bench.Set("fights", "", [.. Enumerable.Range(1, 10).SelectMany(i => new[] { 5, 6 }.Select(mm => $$"""{"kind":"length","spot":"U{{i}}","what":"width","mm":{{mm}},"u_mm":0.02}"""))]);
        var drawer = bench.View("fights", dossier => DrawerView.Of(dossier, null))!;
        Assert.Equal((8, 2), (drawer.Quarrels.Count, drawer.MoreQuarrels));
    }

    [Fact]
    public async Task What_was_done_is_taken_back_and_brought_again_as_often_as_one_likes()
    {
        Assert.True((await hand.Note("brindle", "spot D1", Line.Of("spot").Set("spot", "D1").Set("role", "lamp"))).Ok);
        for (var round = 0; round < 3; round++)
        {
            Assert.Contains("D1", Spots(), StringComparison.Ordinal);
            await hand.Undo("brindle");
            Assert.Equal("Taken back: spot D1.", hand.Said);
            Assert.DoesNotContain("D1", Spots(), StringComparison.Ordinal);
            await hand.Redo("brindle");
            Assert.Equal("Brought again: spot D1.", hand.Said);
        }
    }

    [Fact]
    public async Task A_refusal_is_said_with_every_fault_and_leaves_nothing_to_take_back()
    {
        var stored = await hand.Note("brindle", "a bad length", Line.Of("length").Set("spot", "U1").Set("what", "width").Set("mm", -3));
        Assert.False(stored.Ok);
        Assert.True(hand.Refused);
        Assert.StartsWith("Not stored (a bad length): Line 1:", hand.Said, StringComparison.Ordinal);
        Assert.Null(acts.Last("brindle"));
        await hand.Undo("brindle");
        Assert.StartsWith("Nothing was done since the workbench started", hand.Said, StringComparison.Ordinal);
    }

    [Fact]
    public void The_overview_lists_the_newest_entries_first_with_what_they_say()
    {
        var overview = bench.View("brindle", DossierOverview.Of)!;
        Assert.Equal("touch", overview.Newest[0].Kind);
        Assert.Contains(overview.Newest, entry => entry.Kind == "claim" && entry.Say.StartsWith("C1: U1 is ", StringComparison.Ordinal));
    }

    [Fact]
    public async Task What_was_taken_back_written_anew_or_published_is_said_in_words()
    {
        await hand.Note("brindle", "spot D1", Line.Of("spot").Set("spot", "D1").Set("role", "lamp"));
        await hand.Undo("brindle");
        Assert.Equal("taken back: spot.", Newest("undo"));
        var length = bench.View("brindle", dossier => dossier.Session.View.Live<Lidoff.Seeing.Kinds.LengthSighting>()[0].Id.Hex)!;
        Assert.True((await hand.Note("brindle", "width anew", Line.InPlaceOf(length, Line.Of("length").Set("spot", "U1").Set("what", "long side").Set("mm", 6.1)))).Ok);
        Assert.Equal("written anew: length.", Newest("supersede"));
    }

    [Fact]
    public void An_empty_drawer_says_how_to_begin_and_not_that_nothing_is_left()
    {
        bench.Set("new", "");
        Assert.True(bench.View("new", dossier => DrawerView.Of(dossier, null))!.Bare);
        Assert.False(bench.View("brindle", dossier => DrawerView.Of(dossier, null))!.Bare);
    }

    private string Newest(string kind) => bench.View("brindle", DossierOverview.Of)!.Newest.First(entry => entry.Kind == kind).Say;

    private string Spots() => string.Join(' ', bench.View("brindle", dossier => string.Join(' ', Lidoff.Bench.Showing.SpotNames.Of(dossier.Session.View)))!);
}
