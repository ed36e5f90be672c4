using Lidoff.Evidence.Grading;
using Lidoff.Naming.Ranking;
using Lidoff.Weighing.Beliefs;
using Lidoff.Weighing.Modelling;

namespace Lidoff.Weighing.Tests.Modelling;

/// <summary>A person knows the family and not the member.</summary>
public sealed class FamilyTests
{
    private const string Family = """{"kind":"decide","spot":"U1","accept_family":"ZX52","why":"the maker's sign and a coil of that series"}""";

    /// <summary>
    /// Bayes by hand. Before: members 0.30 and 0.10, the one other listed part 0.20, nothing else listed, in no list 0.40. A quarter of
    /// what is in no list, 0.10, is taken as members nobody listed. The person is right 99 times of 100:
    /// members 0.30 × 0.99 = 0.297, 0.10 × 0.99 = 0.099, unlisted members 0.10 × 0.99 = 0.099,
    /// others 0.20 × 0.01 = 0.002, in no list 0.30 × 0.01 = 0.003; together 0.500.
    /// After: 0.594, 0.198, 0.198, 0.004, 0.006; the family 0.990.
    /// </summary>
    [Fact]
    public void An_accepted_family_conditions_the_belief_on_its_members()
    {
        List<IdentityState> states = [new(IdentityState.Sort.Part, "ZX52832"), new(IdentityState.Sort.Part, "ZX52810"), new(IdentityState.Sort.Part, "QB24075"), new(IdentityState.Sort.Unlisted, "ZX52"), new(IdentityState.Sort.None, "")];
        double[] before = [0.30, 0.10, 0.20, 0.10, 0.30];
        var factor = new DecisionFactor("U1", 0, new("U1", Naming.Kinds.Verdict.Family, "ZX52", "why"), states);
        var after = JointStep.Run([new("U1", [.. states.Select(state => state.Words)], [.. before.Select(each => Math.Log(each))])], [factor])[0];
        Assert.Equal([0.594, 0.198, 0.004, 0.198, 0.006], after.P.Select(p => Math.Round(p, 9)));
    }

    [Fact]
    public void The_family_is_the_verdict_until_the_evidence_reaches_a_member_and_can_be_taken_back()
    {
        using var bench = new Bench();
        bench.Note("""{"kind":"spot","spot":"U1","role":"radio"}""");
        Assert.False(bench.Model.Identity("U1").Asked);
        var word = bench.Note(Family)[0];
        var said = bench.Model.Identity("U1");
        Assert.Equal((NameLevel.Family, "family ZX52", Grade.E1), (said.Level, said.Says, said.Grade));
        Assert.InRange(said.P, 0.8, 0.99);
        Assert.Equal(1.0, said.Joint.P.Sum(), 9);
        // What a claim or the report prints.
        var value = bench.Model.Value("part:U1");
        Assert.Equal(("family ZX52", Grade.E1), (value.Name, value.Grade));
        Assert.Contains(word.Id, value.RestsOn);

        // A body that only one of them has says which.
        bench.Note("""{"kind":"body","spot":"U1","mm":[6.0,6.0],"u_mm":0.03}""", """{"kind":"pins","spot":"U1","count":48}""", """{"kind":"mark","spot":"U1","lines":["528?2"]}""");
        Assert.Equal((NameLevel.Part, "ZX52832"), (bench.Model.Identity("U1").Level, bench.Model.Identity("U1").Says));

        bench.Note($$"""{"kind":"undo","target":"{{word.Id.Hex}}"}""");
        Assert.Empty(bench.Model.Identity("U1").Decisions);
    }

    [Fact]
    public void A_family_of_one_listed_member_does_not_name_that_member()
    {
        using var bench = new Bench();
        bench.Note("""{"kind":"decide","spot":"U1","accept_family":"QB240xx","why":"the charger beside it is one"}""");
        var said = bench.Model.Identity("U1");
        Assert.Equal((NameLevel.Family, "family QB240xx"), (said.Level, said.Says));
    }

    [Fact]
    public void A_family_that_no_list_holds_is_kept_as_the_person_said_it()
    {
        using var bench = new Bench();
        bench.Note("""{"kind":"decide","spot":"U1","accept_family":"KK77","why":"seen on the box of another product"}""");
        var said = bench.Model.Identity("U1");
        Assert.Equal((NameLevel.Family, "family KK77", Grade.E1), (said.Level, said.Says, said.Grade));
    }
}
