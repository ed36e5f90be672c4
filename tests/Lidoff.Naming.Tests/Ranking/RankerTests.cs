using Lidoff.Naming.Asking;
using Lidoff.Naming.Knowing;
using Lidoff.Naming.Marks;
using Lidoff.Naming.Ranking;

namespace Lidoff.Naming.Tests.Ranking;

public class RankerTests
{
    private static readonly Ranker Small = new(new NamingCatalogue(SmallCatalogue.Parts));

    private static NameEvidence Marked(params string[] lines) => new() { Mark = MarkLattice.OfText(lines) };

    private static double Sum(LocalBelief belief) => belief.Candidates.Sum(c => c.P) + belief.OthersP + belief.NoneP;

    [Fact]
    public void A_mark_with_the_letters_in_front_dropped_names_the_part_and_its_order_code()
    {
        var belief = Small.Rank(Marked("N52832", "QFAA?0") with { BodyMm = (6, 6), Pins = 48 });
        Assert.Equal(NameLevel.Part, belief.Level);
        Assert.Equal("nRF52832", belief.Candidates[0].Part.Name);
        Assert.Equal(["nRF52832-QFAA"], belief.Candidates[0].OrderCodes);
        Assert.Equal("nRF52", belief.Family!.Name);
    }

    [Fact]
    public void The_package_alone_narrows_the_order_codes() =>
        Assert.Equal(["nRF52832-CIAA"], Small.Rank(Marked("N52832") with { BodyMm = (3.0, 3.2), Pins = 50 }).Candidates[0].OrderCodes);

    [Theory]
    [InlineData("N5Z832")]
    [InlineData("NS2832")]
    [InlineData("N52B32")]
    public void One_look_alike_misread_still_names_the_part(string read)
    {
        var belief = Small.Rank(Marked(read) with { BodyMm = (6, 6), Pins = 48 });
        Assert.Equal(("nRF52832", NameLevel.Part), (belief.Candidates[0].Part.Name, belief.Level));
    }

    [Fact]
    public void A_scratch_that_may_be_a_character_costs_little_once_the_reader_says_so()
    {
        static MarkPosition Scratch(double nothing) => new([new('8', 0.95 - nothing)], 0.05, false, nothing);
        static double Db(double nothing) => Small.Rank(new() { Mark = new([[.. MarkLattice.OfText("N52").Lines[0], Scratch(nothing), .. MarkLattice.OfText("832").Lines[0]]]) })
            .Candidates.First(each => each.Part.Name == "nRF52832").Because.Single(each => each.Evidence == "mark").Db;
        var sure = Small.Rank(Marked("N52832")).Candidates.First(each => each.Part.Name == "nRF52832").Because.Single(each => each.Evidence == "mark").Db;
        // One bit of doubt is 10 log10 2, three decibans; the mark as a whole can only soften that.
        Assert.InRange(sure - Db(0.475), 0, 3.5);
        // A character too many that somebody is sure of costs more.
        Assert.True(Db(0) < Db(0.475), $"{Db(0)} dB against {Db(0.475)} dB");
        Assert.True(Db(0.9) >= Db(0.475));
    }

    [Fact]
    public void An_unread_digit_that_two_siblings_fill_gives_the_family()
    {
        var belief = Small.Rank(Marked("N5281?", "QFAA") with { BodyMm = (6, 6), Pins = 48 });
        Assert.Equal(NameLevel.Family, belief.Level);
        Assert.Equal(["nRF52810", "nRF52811"], belief.Candidates.Take(2).Select(c => c.Part.Name).Order());
    }

    // Makers left out of the catalogue must come out as none, not as a neighbour (design §6).
    [Theory]
    [InlineData("XR7201B")]
    [InlineData("WQM4410")]
    public void A_full_number_of_a_part_that_is_not_listed_is_none(string read)
    {
        var belief = Small.Rank(Marked(read, "2146") with { BodyMm = (2, 2), Pins = 12 });
        Assert.Equal(NameLevel.None, belief.Level);
        Assert.True(belief.NoneP > 0.7);
    }

    [Fact]
    public void A_sibling_that_is_not_listed_is_none_and_not_its_neighbour()
    {
        var belief = Small.Rank(Marked("N52977", "QFAA") with { BodyMm = (6, 6), Pins = 48 });
        Assert.NotEqual(NameLevel.Part, belief.Level);
        Assert.True(belief.NoneP > 0.5);
    }

    [Fact]
    public void Empty_evidence_gives_the_prior_and_says_so()
    {
        var belief = Small.Rank(new NameEvidence());
        Assert.Equal([RankingSentences.EmptyEvidence], belief.Remarks);
        Assert.All(belief.Candidates, c => Assert.Empty(c.Because));
        Assert.Equal(NameLevel.None, belief.Level);
    }

    [Fact]
    public void Contradictory_evidence_sends_the_mass_to_none_and_says_so()
    {
        var belief = Small.Rank(Marked("SEN3300") with { BodyMm = (9, 9), Pins = 64, Identity = new RegisterFact(0x0F, 0x99), Bus = new BusFact("i2c", 0x5A), SupplyV = 12 });
        Assert.True(belief.NoneP > 0.5);
        Assert.Contains(RankingSentences.Contradiction, belief.Remarks);
    }

    [Fact]
    public void An_identity_value_tells_apart_what_outlines_cannot()
    {
        var outline = new NameEvidence { BodyMm = (2, 2), Pins = 12, Package = "LGA" };
        Assert.Equal(2, Small.Rank(outline).Candidates.Take(2).Count(c => c.Part.Name.StartsWith("SEN21", StringComparison.Ordinal)));
        Assert.Equal("KAX500", Small.Rank(new NameEvidence { Identity = new RegisterFact(0x0F, 0x35), Bus = new BusFact("i2c", 0x0E) }).Candidates[0].Part.Name);
    }

    [Fact]
    public void Sides_in_either_order_are_the_same_evidence()
    {
        var one = NameResultWriter.Write("a", Small.Rank(new NameEvidence { BodyMm = (3.2, 3.0) }));
        var other = NameResultWriter.Write("a", Small.Rank(new NameEvidence { BodyMm = (3.0, 3.2) }));
        Assert.Equal(one.Replace("3.2 × 3 mm measured", "", StringComparison.Ordinal), other.Replace("3 × 3.2 mm measured", "", StringComparison.Ordinal));
    }

    [Fact]
    public void Probabilities_add_up_to_one_whatever_is_shown()
    {
        foreach (var evidence in new[] { new NameEvidence(), Marked("N52832"), Marked("31?HQ") with { BodyMm = (2, 2), Pins = 12 } })
        {
            foreach (var top in new[] { 1, 3, 10, 1000 }) Assert.Equal(1, Sum(Small.Rank(evidence, top)), 12);
        }
    }

    [Fact]
    public void The_order_of_rows_and_of_keys_changes_nothing()
    {
        var shuffled = new Ranker(new NamingCatalogue(SmallCatalogue.Parts.Reverse()));
        var one = EvidenceReader.Read("""{"evidence":{"mark_lines":["N52832"],"pins":48,"body_mm":[6,6],"supply_v":3}}""", 1).Line.Value.Evidence;
        var other = EvidenceReader.Read("""{"evidence":{"supply_v":3,"body_mm":[6,6],"pins":48,"mark_lines":["N52832"]}}""", 1).Line.Value.Evidence;
        Assert.Equal(NameResultWriter.Write("a", Small.Rank(one)), NameResultWriter.Write("a", shuffled.Rank(other)));
    }

    // 48 pins on a 6 × 6 mm QFN of 0.4 mm pitch follow from the rest (package tables, MO-220): said after the body, they add little.
    [Fact]
    public void What_follows_from_the_package_counts_once()
    {
        double Pins(NameEvidence e) => Small.Rank(e).Candidates.First(c => c.Part.Name == "nRF52832").Because.Where(b => b.Evidence == "pins").Sum(b => b.Db);
        var alone = Pins(Marked("N52832") with { Pins = 48 });
        var after = Pins(Marked("N52832") with { Pins = 48, BodyMm = (6, 6), Package = "QFN" });
        Assert.True(after < alone / 2, $"{after} of {alone} dB");
    }

    [Fact]
    public void A_fact_the_catalogue_does_not_know_says_nothing()
    {
        var bare = new Ranker(new NamingCatalogue([.. SmallCatalogue.Parts, new Lidoff.Catalogue.Parts.Part { Name = "QX777", Class = "accelerometer" }]));
        var belief = bare.Rank(new NameEvidence { BodyMm = (2, 2), Pins = 12, SupplyV = 3, Identity = new RegisterFact(0x0F, 0x33), DateCode = "1701" }, 1000);
        Assert.Empty(belief.Candidates.Single(c => c.Part.Name == "QX777").Because);
    }

    [Fact]
    public void Next_names_a_measurement_with_bits_minutes_and_risk()
    {
        var next = Small.Rank(Marked("N5281?")).Next;
        Assert.Contains(next, n => n.Measure == "read the mark again under other light" && n is { Bits: > 0.5, Minutes: > 0, Risk: "none" });
    }

    [Fact]
    public void Json_has_the_keys_of_the_contract_in_order()
    {
        using var json = System.Text.Json.JsonDocument.Parse(NameResultWriter.Write("17", Small.Rank(Marked("N52832"), 2)));
        Assert.Equal(["format", "id", "candidates", "others_p", "family", "none_p", "level", "next"], json.RootElement.EnumerateObject().Select(p => p.Name));
        Assert.Equal(["part", "order_codes", "maker", "class", "p", "because"], json.RootElement.GetProperty("candidates")[0].EnumerateObject().Select(p => p.Name));
        Assert.Equal(["evidence", "db", "say"], json.RootElement.GetProperty("candidates")[0].GetProperty("because")[0].EnumerateObject().Select(p => p.Name));
    }

    // What a person reads of a mark: all of it, the beginning of a longer line, or some characters, counted by hand.
    [Theory]
    [InlineData("N52832", "'N52832' fits its number without the letters in front, N52832.")]
    [InlineData("NRF52832", "'NRF52832' fits its full number NRF52832.")]
    [InlineData("N52832CF", "'N52832CF' begins with its number without the letters in front, N52832.")]
    public void The_sentence_of_a_mark_says_how_much_of_it_fits(string read, string says) =>
        Assert.Equal(says, Small.Rank(Marked(read)).Candidates.First(each => each.Part.Name == "nRF52832").Because.Single(each => each.Evidence == "mark").Say);

    [Fact]
    public void Of_a_mark_that_is_another_parts_the_characters_that_fit_are_counted()
    {
        var ranker = new Ranker(new NamingCatalogue([Sized("ZXQ7A90", 3, 3), .. SmallCatalogue.Parts]));
        var because = ranker.Rank(Marked("98C0D51", "ZXQ746")).Candidates.First(each => each.Part.Name == "ZXQ7A90").Because.Single(each => each.Evidence == "mark");
        Assert.Equal("4 of 7 characters of its full number ZXQ7A90 are in '98C0D51 ZXQ746'.", because.Say);
    }

    [Fact]
    public void A_short_code_at_the_beginning_of_a_longer_mark_is_not_said_to_fit_it()
    {
        var ranker = new Ranker(new NamingCatalogue([new() { Name = "ZX0048", Class = "crystal", Marks = [new("A", Lidoff.Catalogue.Parts.Confidence.Published, "")] }, .. SmallCatalogue.Parts]));
        var because = ranker.Rank(Marked("A048L")).Candidates.First(each => each.Part.Name == "ZX0048").Because.Single(each => each.Evidence == "mark");
        Assert.DoesNotContain("fits", because.Say, StringComparison.Ordinal);
    }

    // A cell bears its designation and ratings (IEC 61960-3, from memory), which no list of semiconductors explains.
    [Fact]
    public void The_print_on_a_cell_is_not_compared_with_chips()
    {
        var ranker = new Ranker(new NamingCatalogue([Sized("ZXQ7A90", 3, 3), .. SmallCatalogue.Parts]));
        var cell = ranker.Rank(Marked("ZXQ7A90") with { Class = "cell" });
        Assert.Equal((0, 1.0, NameLevel.None), (cell.Candidates.Count, cell.NoneP, cell.Level));
        Assert.Equal(["A cell is in no list of parts: what is printed on it is kept as it is, and not compared with chips."], cell.Remarks);
        // Of any other kind it is, and so is what a person settled on.
        Assert.Equal("ZXQ7A90", ranker.Rank(Marked("ZXQ7A90")).Candidates[0].Part.Name);
        Assert.Contains(ranker.Rank(Marked("ZXQ7A90") with { Class = "cell" }, also: part => part.Name == "ZXQ7A90").Candidates, each => each.Part.Name == "ZXQ7A90");
    }

    // A crystal bears its frequency in MHz (common practice, no source); of this one a clock is named alike.
    [Fact]
    public void The_frequency_on_a_crystal_names_no_clock()
    {
        var ranker = new Ranker(new NamingCatalogue([new() { Name = "ZQ32000", Class = "RTC" }, .. SmallCatalogue.Parts]));
        var (bare, crystal) = (ranker.Rank(Marked("32.000")), ranker.Rank(Marked("32.000") with { Class = "crystal" }));
        double Odds(LocalBelief answer) => answer.Candidates.Single(each => each.Part.Name == "ZQ32000").P / answer.NoneP;
        Assert.True(Odds(crystal) < Odds(bare) / 10, $"{Odds(crystal)} against {Odds(bare)}");
        // Taken for a clock it would be one.
        Assert.True(Odds(ranker.Rank(Marked("32.000") with { Class = "real-time clock" })) > Odds(bare));
    }

    [Fact]
    public void One_side_of_a_body_speaks_less_than_both_and_asks_for_the_other()
    {
        static double Db(NameEvidence evidence) => Small.Rank(evidence).Candidates.First(each => each.Part.Name == "nRF52832").Because.Single(each => each.Evidence == "body").Db;
        var pins = new NameEvidence { Pins = 48 };
        var (both, one) = (Db(new() { BodyMm = (6.0, 6.0) }), Db(new() { LongMm = 6.0 }));
        Assert.InRange(one, 0.1, both);
        Assert.True(Db(new() { LongMm = 9.0 }) < 0);
        Assert.True(Db(new() { ShortMm = 6.0 }) > 0);
        // Two bodies of one long side: the other one tells them apart.
        var two = new Ranker(new NamingCatalogue([Sized("ZX1001", 6, 6), Sized("ZX1002", 6, 4)])).Rank(Marked("ZX100?") with { LongMm = 6.0 });
        Assert.Contains(two.Next, next => next.Measure == "measure the short side of the body");
        Assert.DoesNotContain(two.Next, next => next.Measure == "measure the body");
        Assert.Equal("6 mm long side measured; it is 6 × 6 or 3.2 × 3 mm.", Small.Rank(pins with { LongMm = 6.0 }).Candidates.First(each => each.Part.Name == "nRF52832").Because.Single(each => each.Evidence == "body").Say);
    }

    private static Lidoff.Catalogue.Parts.Part Sized(string name, double length, double width) => new() { Name = name, Class = "regulator", Packages = [new("QFN-16", "QFN", length, width, 0.85, 0.5, 16)] };
}
