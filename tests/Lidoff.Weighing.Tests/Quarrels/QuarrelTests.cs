using System.Globalization;
using Lidoff.Weighing.Quarrels;
using Bench = Lidoff.Weighing.Tests.Modelling.Bench;

namespace Lidoff.Weighing.Tests.Quarrels;

public sealed class QuarrelTests
{
    [Fact]
    public void Two_callipers_that_cannot_both_be_right_quarrel_and_say_so()
    {
        using var bench = new Bench();
        var noted = bench.Note(
            """{"kind":"length","spot":"U1","what":"width","mm":3.00,"u_mm":0.015,"instrument":"calliper"}""",
            """{"kind":"length","spot":"U1","what":"width","mm":3.30,"u_mm":0.015,"instrument":"micrometer"}""",
            """{"kind":"length","spot":"U2","what":"width","mm":3.00,"u_mm":0.015}""",
            """{"kind":"length","spot":"U2","what":"width","mm":3.05,"u_mm":0.015}""");
        var quarrel = Assert.Single(QuarrelBook.Find(bench.View, bench.Model));
        Assert.Equal("width of U1 cannot be 3.000 ± 0.015 mm and 3.300 ± 0.015 mm.", quarrel.Say);
        Assert.Equal(new[] { noted[0].Id, noted[1].Id }.Order(), quarrel.Members);
        // Nothing tells which of the two is wrong: each as likely as the other.
        Assert.Equal(quarrel.Members.Select(member => (Assert.Single(quarrel.Diagnoses, each => each.Drop.Contains(member)).Drop.Count, 0.5)), quarrel.Diagnoses.Select(each => (each.Drop.Count, each.P)));
        Assert.Equal(("measure width of U1 once more with a calliper", 2), (quarrel.Settle, quarrel.Minutes));
        bench.Note($$"""{"kind":"undo","target":"{{noted[1].Id.Hex}}"}""");
        Assert.Empty(QuarrelBook.Find(bench.View, bench.Model));
    }

    // By hand: the difference of two readings of ± 0.03 and ± 0.04 mm is ± 0.05 mm (JCGM 100:2008, 5.1.2), five of which are 0.25 mm. A normal
    // strays further once in 1.74 million (tables of the standard normal distribution: 2 (1 - Phi(5)) = 5.7e-7), further than four once in 15,800.
    [Theory]
    [InlineData(3.20, false)]
    [InlineData(3.249, false)]
    [InlineData(3.251, true)]
    public void Lengths_quarrel_from_five_standard_uncertainties_of_their_difference(double mm, bool quarrels)
    {
        using var bench = new Bench();
        bench.Note(
            """{"kind":"length","spot":"U1","what":"width","mm":3.00,"u_mm":0.03}""",
            string.Create(CultureInfo.InvariantCulture, $$"""{"kind":"length","spot":"U1","what":"width","mm":{{mm}},"u_mm":0.04}"""));
        Assert.Equal(quarrels, QuarrelBook.Find(bench.View, bench.Model).Count == 1);
    }

    [Fact]
    public void Two_people_who_replace_one_entry_unseen_quarrel_until_one_of_them_takes_it_back()
    {
        using var bench = new Bench();
        var old = bench.Note("""{"kind":"mass","spot":"A","g":6.1}""")[0].Id;
        using var other = bench.Copied("b");
        var mine = bench.Note("""{"kind":"mass","spot":"A","g":6.01}""", $$"""{"kind":"supersede","target":"{{old.Hex}}","by_line":1}""");
        var theirs = other.Note("""{"kind":"mass","spot":"A","g":5.98}""", $$"""{"kind":"supersede","target":"{{old.Hex}}","by_line":1}""");
        Assert.Empty(QuarrelBook.Find(bench.View, bench.Model));
        bench.Merge(other);
        var quarrel = Assert.Single(QuarrelBook.Find(bench.View, bench.Model));
        Assert.Equal(("replaced twice", "undo all but one of the replacements"), (quarrel.Rule, quarrel.Settle));
        Assert.Equal($"Entry {old.Hex[..12]} was replaced 2 times by people who had not seen each other's work; all replacements count.", quarrel.Say);
        Assert.Equal(new[] { old, mine[0].Id, theirs[0].Id }.Order(), quarrel.Members.Order());
        // Whichever is right, the other goes; the entry they replaced is no way out.
        Assert.Equal(new[] { mine[0].Id, theirs[0].Id }.Order(), quarrel.Diagnoses.Select(each => Assert.Single(each.Drop)).Order());
        Assert.All(quarrel.Diagnoses, each => Assert.Equal(0.5, each.P));
        bench.Note($$"""{"kind":"undo","target":"{{theirs[0].Id.Hex}}"}""", $$"""{"kind":"undo","target":"{{theirs[1].Id.Hex}}"}""");
        Assert.Empty(QuarrelBook.Find(bench.View, bench.Model));
    }

    // A meter that reads open shows a megohm at least, and a beep is below 100 Ω: common practice, no source.
    [Fact]
    public void A_beep_and_an_open_circuit_between_two_points_cannot_both_be()
    {
        using var bench = new Bench();
        var noted = bench.Note("""{"kind":"touch","a":"TP1","b":"TP2","beep":true}""", """{"kind":"touch","a":"TP1","b":"TP2","open":true}""");
        var quarrel = Assert.Single(QuarrelBook.Find(bench.View, bench.Model));
        Assert.Equal(("one net and apart", "TP1 and TP2 read open, yet they are one net: TP1 and TP2 beep."), (quarrel.Rule, quarrel.Say));
        Assert.Equal(noted.Select(each => each.Id).Order(), quarrel.Members);
    }
}
