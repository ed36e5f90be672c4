using Lidoff.Evidence.Grading;
using Lidoff.Weighing.Becauses;
using Lidoff.Weighing.Questions;
using Lidoff.Weighing.Tests.Modelling;

namespace Lidoff.Weighing.Tests.Becauses;

public sealed class BecauseTreeTests : IDisposable
{
    private readonly Bench bench = new();

    public void Dispose() => bench.Dispose();

    private BecauseNode Of(string reference, params TiedClaim[] claims) => BecauseTree.Of(bench.View, bench.Model, reference, claims);

    [Fact]
    public void A_length_leads_over_its_entries_to_the_raw_file_and_its_hash()
    {
        var picture = bench.Picture("top.png");
        var noted = bench.Note(
            """{"kind":"scale","picture":"top.png","from":[0,0],"to":[1000,0],"length_mm":20,"u_mm":0.01}""",
            """{"kind":"length","spot":"U1","what":"width","picture":"top.png","from":[0,0],"to":[350,0],"by":"N. N."}""");
        var thing = Of("length:U1:width");
        Assert.Equal((BecauseSort.Thing, "width of U1", Grade.E2), (thing.Sort, thing.Title, thing.Grade));
        Assert.StartsWith("In nine cases of ten it lies in ", thing.Sentences[0], StringComparison.Ordinal);
        Assert.Equal([picture.Id.Hex, noted[0].Id.Hex, noted[1].Id.Hex], thing.Rests.Select(each => each.Id));
        var length = thing.Rests[2];
        Assert.Equal((BecauseSort.Entry, "length", "width of U1 clicked in top.png, from (0, 0) to (350, 0) px.", "N. N.", noted[1].Entry.At), (length.Sort, length.Title, length.Say, length.By, length.At));
        var file = Assert.Single(length.Rests);
        Assert.Equal((BecauseSort.File, "top.png", bench.Model.Picture("top.png").Sha256), (file.Sort, file.Title, file.Id));
        Assert.All(thing.Rests.SelectMany(entry => entry.Rests), raw => Assert.Empty(raw.Rests));
    }

    [Fact]
    public void A_picture_stands_under_its_name_where_the_journal_holds_its_hash()
    {
        bench.Picture("top.png");
        var sha256 = bench.Model.Picture("top.png").Sha256;
        var noted = bench.Note($$"""{"kind":"length","spot":"U1","what":"width","picture":"{{sha256}}","from":[0,0],"to":[350,0]}""");
        Assert.Equal("width of U1 clicked in top.png, from (0, 0) to (350, 0) px.", Of("entry:" + noted[0].Id.Hex).Say);
    }

    [Fact]
    public void A_spot_shows_everything_noted_about_it()
    {
        bench.Note("""{"kind":"spot","spot":"U1","role":"radio","class":"chip"}""", """{"kind":"mark","spot":"U1","lines":["ZX52832"]}""", """{"kind":"mark","spot":"U2","lines":["QB24075"]}""");
        var thing = Of("spot:U1");
        Assert.Equal(["spot U1: radio.", "mark on U1: ZX52832."], thing.Rests.Select(entry => entry.Say));
        Assert.StartsWith("ZX52832", thing.Say, StringComparison.Ordinal);
        // Good's unit for weight of evidence, a tenth of a ban; dB would be read as decibels.
        Assert.Contains(thing.Sentences, sentence => sentence.Contains(" decibans from mark: ", StringComparison.Ordinal));
        Assert.Equal("Nothing was noted about U9 yet.", Of("spot:U9").Say);
    }

    [Fact]
    public void A_part_a_reckoning_and_a_claim_say_what_they_rest_on()
    {
        bench.Note("""{"kind":"mark","spot":"U1","lines":["ZX52832"]}""");
        var bound = bench.Note("""{"kind":"reckon","reckoning":"R1","calculation":"capacity_from_energy","inputs":{"energy":"0.67 Wh ± 0.02","voltage":"3.7"}}""")[0];
        Assert.Equal("mark on U1: ZX52832.", Assert.Single(Of("part:U1").Rests).Say);
        var reckoning = Of("R1");
        Assert.Equal("reckoning R1: capacity_from_energy of energy 0.67 Wh ± 0.02, voltage 3.7.", Assert.Single(reckoning.Rests).Say);
        Assert.Contains(reckoning.Sentences, said => said.StartsWith("Formula: ", StringComparison.Ordinal));
        var claim = Of("claim:C1", new TiedClaim("C1", "It holds some.", Grade.E1, true, false, ["R1"], [bound.Id]));
        Assert.Equal(("It holds some.", "C1 does not say any more what was published."), (claim.Say, claim.Sentences[0]));
        Assert.Equal(bound.Id.Hex, Assert.Single(claim.Rests).Id);
        Assert.Equal("There is no claim called 'C2' in this dossier.", Of("claim:C2").Say);
    }

    [Fact]
    public void An_entry_says_what_became_of_it()
    {
        var mark = bench.Note("""{"kind":"mark","spot":"U1","lines":["ZX52832"]}""")[0];
        bench.Note($$"""{"kind":"undo","target":"{{mark.Id.Hex}}"}""");
        Assert.Equal("It was taken back.", Assert.Single(Of("entry:" + mark.Id.Hex).Sentences));
        Assert.Equal("This dossier has no such entry.", Of("entry:abc").Say);
        Assert.StartsWith("'nonsense' is no reference", Of("nonsense").Say, StringComparison.Ordinal);
    }
}
