using Lidoff.Weighing.Quarrels;
using Bench = Lidoff.Weighing.Tests.Modelling.Bench;

namespace Lidoff.Weighing.Tests.Quarrels;

/// <summary>Masses and currents that cannot all be true.</summary>
public sealed class OpeningQuarrelTests
{
    private static IReadOnlyList<Quarrel> Of(params string[] lines)
    {
        using var bench = new Bench();
        bench.Note(lines);
        return QuarrelBook.Find(bench.View, bench.Model);
    }

    [Fact]
    public void Two_masses_of_one_thing_quarrel_until_one_is_taken_back_and_the_value_says_which_counts()
    {
        using var bench = new Bench();
        var noted = bench.Note("""{"kind":"mass","g":11.0,"u_g":0.1}""", """{"kind":"mass","g":5.0,"u_g":0.05}""");
        var quarrel = Assert.Single(QuarrelBook.Find(bench.View, bench.Model));
        Assert.Equal("the whole cannot weigh 11.00 ± 0.10 g and 5.000 ± 0.050 g with nothing taken off between; the later one counts until it is settled.", quarrel.Say);
        Assert.StartsWith("weigh the whole once more", quarrel.Settle, StringComparison.Ordinal);
        Assert.Contains("The newest of 2 readings counts: 5.000 ± 0.050 g; earlier: 11.00 ± 0.10 g.", bench.Model.Value("mass:whole").Because);
        bench.Note($$"""{"kind":"undo","target":"{{noted[1].Id.Hex}}"}""");
        Assert.Empty(QuarrelBook.Find(bench.View, bench.Model));
        Assert.Equal(["put on a scale"], bench.Model.Value("mass:whole").Because);
    }

    // By hand: two readings of ± 0.01 g differ by ± 0.0141 g (JCGM 100:2008, 5.1.2), four of which are 0.0566 g.
    [Theory]
    [InlineData("BT1", 6.05, false)]
    [InlineData("BT1", 6.07, true)]
    [InlineData("BT2", 9.00, false)]
    public void Masses_quarrel_from_four_standard_uncertainties_of_their_difference(string spot, double g, bool quarrels) => Assert.Equal(
        quarrels,
        Of("""{"kind":"mass","spot":"BT1","g":6.00,"u_g":0.01}""", FormattableString.Invariant($$"""{"kind":"mass","spot":"{{spot}}","g":{{g}},"u_g":0.01}""")).Count == 1);

    // A scale that logs for an hour is one thing to settle and no hundred thousand.
    [Fact]
    public void A_log_of_readings_does_not_flood_the_drawer()
    {
        var log = Enumerable.Range(0, 400).Select(i => FormattableString.Invariant($$"""{"kind":"mass","spot":"BT1","g":{{6 + (i % 2)}},"u_g":0.01}"""));
        Assert.InRange(Of([.. log]).Count, 1, 66);
    }

    [Fact]
    public void A_whole_without_its_cell_weighs_less_and_another_specimen_weighs_what_it_likes()
    {
        Assert.Empty(Of("""{"kind":"mass","g":11.0,"u_g":0.1}""", """{"kind":"step","does":"took the cell out","act":"cell"}""", """{"kind":"mass","g":8.0,"u_g":0.1}"""));
        Assert.Empty(Of("""{"kind":"mass","specimen":"A","g":11.0,"u_g":0.1}""", """{"kind":"mass","specimen":"B","g":8.0,"u_g":0.1}"""));
        // Of two specimens, what names neither may be of either.
        Assert.Empty(Of("""{"kind":"specimen","specimen":"A"}""", """{"kind":"specimen","specimen":"B"}""", """{"kind":"mass","g":11.0,"u_g":0.1}""", """{"kind":"mass","g":8.0,"u_g":0.1}"""));
    }

    [Theory]
    [InlineData("A", 9.0, 1.0, false)]
    [InlineData("A", 9.0, 0.1, true)]
    [InlineData("", 9.0, 0.1, true)]
    [InlineData("B", 9.0, 0.1, false)]
    public void The_mass_that_stands_with_a_specimen_quarrels_with_its_weighing(string specimen, double g, double u, bool quarrels)
    {
        var found = Of("""{"kind":"specimen","specimen":"A","mass_g":11,"u_g":0.01}""", FormattableString.Invariant($$"""{"kind":"mass","specimen":"{{specimen}}","g":{{g}},"u_g":{{u}}}""").Replace("\"specimen\":\"\",", "", StringComparison.Ordinal));
        Assert.Equal(quarrels, found.Count == 1);
        if (quarrels) Assert.StartsWith("the whole of A cannot weigh 11.000 ± 0.010 g and 9.00 ± 0.10 g", found[0].Say, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_currents_of_one_state_quarrel_and_the_newest_counts()
    {
        using var bench = new Bench();
        var noted = bench.Note("""{"kind":"state","name":"idle","current_ua":6.1,"u_ua":0.4}""", """{"kind":"state","name":"idle","current_ua":9.8,"u_ua":0.5}""", """{"kind":"state","name":"worn","current_ua":400,"u_ua":9}""");
        var quarrel = Assert.Single(QuarrelBook.Find(bench.View, bench.Model));
        Assert.Equal("state idle cannot draw 6.10 ± 0.40 µA and 9.80 ± 0.50 µA, unless it is two states; the later one counts until it is settled.", quarrel.Say);
        Assert.Contains("The newest of 2 readings counts: 9.80 ± 0.50 µA; earlier: 6.10 ± 0.40 µA.", bench.Model.Value("state:idle").Because);
        bench.Note($$"""{"kind":"undo","target":"{{noted[0].Id.Hex}}"}""");
        Assert.Empty(QuarrelBook.Find(bench.View, bench.Model));
    }

    // By hand: 0.4 and 0.5 µA make 0.64 µA, four of which are 2.56 µA.
    [Theory]
    [InlineData(8.6, false)]
    [InlineData(8.7, true)]
    public void Currents_that_are_merely_unlikely_are_no_quarrel(double ua, bool quarrels) => Assert.Equal(
        quarrels,
        Of("""{"kind":"state","name":"idle","current_ua":6.1,"u_ua":0.4}""", FormattableString.Invariant($$"""{"kind":"state","name":"idle","current_ua":{{ua}},"u_ua":0.5}""")).Count == 1);
}
