using Lidoff.Naming.Ranking;
using Lidoff.TestSupport;
using Lidoff.Weighing.Quarrels;

namespace Lidoff.Weighing.Tests.Modelling;

/// <summary>Two units of one product need not hold the same part: seemingly identical bands had different processors (a fact of the trade).</summary>
public sealed class SpecimenTests
{
    private const string OnA = """{"kind":"mark","spot":"U1","specimen":"A","lines":["ZX52832","2131"]}""";
    private const string OnB = """{"kind":"mark","spot":"U1","specimen":"B","lines":["QB24075","2207"]}""";
    private const string Alike = """{"kind":"alike","spot":"U1","specimens":["A","B"],"why":"same order code on both boxes"}""";

    [Fact]
    public void A_spot_is_named_by_sightings_of_one_specimen_and_the_other_stands_beside_it()
    {
        using var bench = new Bench();
        // A's body of 6 mm with 48 pins must not speak against the 3 mm charger that B's mark names.
        bench.Note(OnA, """{"kind":"body","spot":"U1","specimen":"A","mm":[6.0,6.0],"u_mm":0.03}""", """{"kind":"pins","spot":"U1","specimen":"A","count":48}""");
        Assert.Equal(("ZX52832", "A"), (bench.Model.Identity("U1").Says, bench.Model.Identity("U1").Evidence.Specimen));
        bench.Note(OnB);
        var named = bench.Model.Identity("U1");
        Assert.Equal(("QB24075", "B"), (named.Says, named.Evidence.Specimen));
        Assert.DoesNotContain(named.Evidence.Told, told => told.Evidence is "body" or "pins");
        var other = Assert.Single(named.Evidence.Elsewhere);
        Assert.Equal(("A", "ZX52832/2131"), (other.Specimen, other.Mark));
        Assert.Contains("Specimen A reads ZX52832/2131 there. That does not count for B: nobody said that the two are alike at U1.", bench.Model.Value("part:U1").Because);
        // Different parts in two units are no contradiction.
        Assert.Empty(QuarrelBook.Find(bench.View, bench.Model));
    }

    [Fact]
    public void A_persons_word_joins_specimens_and_can_be_taken_back()
    {
        using var bench = new Bench();
        bench.Note(
            """{"kind":"body","spot":"U1","specimen":"A","mm":[6.0,6.0],"u_mm":0.03}""", """{"kind":"pins","spot":"U1","specimen":"A","count":48}""",
            """{"kind":"mark","spot":"U1","specimen":"B","lines":["ZX528?2"]}""");
        Assert.DoesNotContain(bench.Model.Identity("U1").Evidence.Told, told => told.Evidence == "body");
        var word = bench.Note(Alike)[0];
        Assert.Contains(bench.Model.Identity("U1").Evidence.Told, told => told.Evidence == "body");
        Assert.Equal((NameLevel.Part, "ZX52832"), (bench.Model.Identity("U1").Level, bench.Model.Identity("U1").Says));
        bench.Note($$"""{"kind":"undo","target":"{{word.Id.Hex}}"}""");
        Assert.DoesNotContain(bench.Model.Identity("U1").Evidence.Told, told => told.Evidence == "body");
    }

    [Fact]
    public void What_was_noted_for_no_specimen_counts_for_all()
    {
        using var bench = new Bench();
        bench.Note("""{"kind":"pins","spot":"U1","count":48}""", OnA);
        Assert.Contains(bench.Model.Identity("U1").Evidence.Told, told => told.Evidence == "pins");
    }

    [Fact]
    public void Specimens_said_to_be_alike_whose_marks_share_no_line_quarrel()
    {
        using var bench = new Bench();
        var noted = bench.Note(OnA, OnB, Alike);
        var quarrel = Assert.Single(QuarrelBook.Find(bench.View, bench.Model));
        Assert.Equal("A and B cannot hold the same part at U1 and read ZX52832/2131 and QB24075/2207.", quarrel.Say);
        Assert.Equal(noted.Select(entry => entry.Id).Order(), quarrel.Members);
    }

    [Theory]
    [InlineData("ZX52B32")] // a look-alike
    [InlineData("ZX5283?")]
    [InlineData("ZX*")]
    public void Another_date_line_or_a_worn_place_is_no_quarrel(string line)
    {
        using var bench = new Bench();
        bench.Note(OnA, OnB.Replace("QB24075", line, StringComparison.Ordinal), Alike);
        Assert.Empty(QuarrelBook.Find(bench.View, bench.Model));
    }

    [Fact]
    public void A_word_on_specimens_names_two_of_them_and_its_reason()
    {
        Assert.Empty(KindLines.Complaints(new Naming.Kinds.AlikeKind(), """{"spot":"U1","specimens":["A","B"],"why":"same board"}"""));
        Assert.NotEmpty(KindLines.Say(new Naming.Kinds.AlikeKind(), """{"spot":"U1","specimens":["A"],"why":"same board"}"""));
    }
}
