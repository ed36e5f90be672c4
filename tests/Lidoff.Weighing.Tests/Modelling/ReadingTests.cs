using System.Globalization;
using Lidoff.Naming.Ranking;
using Lidoff.Weighing.Modelling;

namespace Lidoff.Weighing.Tests.Modelling;

/// <summary>What a machine read names a part with its own probabilities, and gives way to what a person typed.</summary>
public sealed class ReadingTests
{
    private static string Reading(string spot, params string[] places) => string.Create(
        CultureInfo.InvariantCulture,
        $$"""{"kind":"reading","spot":"{{spot}}","pictures":["cc"],"region":[50,40,100,80,0],"turn_deg":0,"lines":[[{{string.Join(',', places)}}]],"readings":[[["read",0.5]]],"networks":["aa","bb"],"settings":"s","program":"p"}""");

    private static string Sure(char symbol) => $"[[\"{symbol}\",0.97]]";

    private static string[] Read(string text) => [.. text.Select(Sure)];

    [Fact]
    public void A_reading_names_the_part_and_its_alternatives_count()
    {
        using var bench = new Bench();
        // The last two digits tell ZX52832 from ZX52810: as sure as 0.97 each, then both places divided among the two parts.
        bench.Note(Reading("U1", Read("ZX52832")));
        var sure = bench.Model.Identity("U1");
        Assert.Equal((NameLevel.Part, "ZX52832"), (sure.Level, sure.Says));
        Assert.Equal(("ZX52832", true, 0.5), (sure.Evidence.Machine!.Mark, sure.Evidence.Machine.Counts, sure.Evidence.Machine.P));
        Assert.Equal("mark", sure.Evidence.Told[0].Evidence);
        bench.Note(Reading("U2", [.. Read("ZX528"), """[["3",0.5],["1",0.45]]""", """[["2",0.5],["0",0.45]]"""]));
        double P(string part) => bench.Model.Identity("U2").Local.Candidates.Single(each => each.Part.Name == part).P;
        // A likelihood ratio of (0.5/0.45)² = 1.23, softened by how far a reader is trusted at all (0.98).
        Assert.InRange(P("ZX52832") / P("ZX52810"), 1.15, 1.27);
    }

    [Fact]
    public void A_persons_mark_counts_alone_and_what_the_machine_read_stays_visible()
    {
        using var bench = new Bench();
        bench.Note("""{"kind":"mark","spot":"U1","lines":["QB24075"]}""");
        var alone = bench.Model.Identity("U1");
        // The machine reads another number, later: it neither wins nor weighs.
        var entry = bench.Note(Reading("U1", Read("ZX52832")))[0];
        var both = bench.Model.Identity("U1");
        Assert.Equal(("QB24075", alone.P), (both.Says, both.P));
        Assert.Equal(("ZX52832", entry.Id, false), (both.Evidence.Machine!.Mark, both.Evidence.Machine.Entry, both.Evidence.Machine.Counts));
        // One of the same print adds nothing to it.
        using var same = new Bench();
        same.Note("""{"kind":"mark","spot":"U1","lines":["QB24075"]}""", Reading("U1", Read("QB24075")));
        Assert.Equal(alone.P, same.Model.Identity("U1").P);
        Assert.Single(same.Model.Identity("U1").Evidence.Told, told => told.Evidence == "mark");
        // Taken back, the person's mark leaves the machine's to count again.
        var typed = bench.Note("""{"kind":"mark","spot":"U3","lines":["QB24075"]}""")[0];
        bench.Note(Reading("U3", Read("ZX52832")), $$"""{"kind":"undo","target":"{{typed.Id.Hex}}"}""");
        Assert.Equal("ZX52832", bench.Model.Identity("U3").Says);
    }

    [Fact]
    public void A_reading_of_another_specimen_stands_beside_and_nothing_read_says_nothing()
    {
        using var bench = new Bench();
        bench.Note("""{"kind":"mark","spot":"U1","specimen":"A","lines":["ZX52832"]}""", Reading("U1", Read("QB24075")).Replace("\"spot\":\"U1\"", "\"spot\":\"U1\",\"specimen\":\"B\"", StringComparison.Ordinal));
        var named = bench.Model.Identity("U1");
        Assert.Equal(("ZX52832", "A"), (named.Says, named.Evidence.Specimen));
        Assert.Equal(("B", "QB24075"), (named.Evidence.Elsewhere[0].Specimen, named.Evidence.Elsewhere[0].Mark));
        Assert.Equal("QB24075 (read by the machine)", named.Evidence.Elsewhere[0].Told);
        Assert.Null(named.Evidence.Machine);
        bench.Note(Reading("U2").Replace("\"lines\":[[]],\"readings\":[[[\"read\",0.5]]]", "\"lines\":[],\"readings\":[]", StringComparison.Ordinal));
        Assert.Empty(bench.Model.Identity("U2").Evidence.Told);
    }

    [Fact]
    public void A_sentence_on_a_mark_says_that_a_machine_read_it_and_how_sure_it_is()
    {
        using var bench = new Bench();
        Assert.NotNull(bench.Model.Value("mark:U1").Missing);
        var reading = bench.Note(Reading("U1", Read("ZX52832")))[0];
        var value = bench.Model.Value("mark:U1");
        Assert.Equal("ZX52832 (read by the machine, 50 %)", ValueText.Print(value));
        Assert.Equal([reading.Id], value.RestsOn);
        Assert.Equal("No person has read this mark: the machine did, and by its own reckoning all of it is right with 50 %.", Assert.Single(value.Because));
        bench.Note("""{"kind":"mark","spot":"U1","lines":["ZX52832"]}""");
        Assert.Equal("ZX52832", ValueText.Print(bench.Model.Value("mark:U1")));
    }

    [Fact]
    public void A_hyphen_in_the_lattice_is_no_character_of_the_mark()
    {
        using var bench = new Bench();
        bench.Note(Reading("U1", Read("ZX52832")), Reading("U2", Read("ZX-52832")));
        Assert.Equal("ZX52832", bench.Model.Identity("U2").Says);
        Assert.InRange(bench.Model.Identity("U2").P, 0.9 * bench.Model.Identity("U1").P, 1);
    }
}
