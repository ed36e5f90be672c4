using Bunit;
using Lidoff.Bench.Rooms.Name;
using Lidoff.Bench.Rooms.Name.Spots;
using Lidoff.Bench.Tests.Looking;
using Lidoff.Bench.Working;
using Lidoff.Naming.Kinds;
using Microsoft.Extensions.DependencyInjection;

namespace Lidoff.Bench.Tests.Rooms.Name;

public sealed class SpotPageTests : RoomContext
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    [Fact]
    public async Task A_candidate_is_accepted_with_a_reason_and_the_word_can_be_taken_back()
    {
        var page = Page("U1");
        On(page, "[data-key=a]", e => e.Click());
        page.WaitForElement("#why", Patience).Input("marks compared with a bought one");
        On(page, "form:has(#why)", e => e.Submit());
        page.WaitForAssertion(() => Assert.Contains("U1 is nRF52832", page.Find("section:has(#decide-head) li").TextContent, StringComparison.Ordinal), Patience);
        var decided = Assert.Single(Stored<IdentityDecision>());
        Assert.Equal(("U1", Verdict.Accept, "nRF52832", "marks compared with a bought one"), (decided.Spot, decided.Verdict, decided.Part, decided.Why));
        await Hand.Undo("d");
        Assert.Empty(Stored<IdentityDecision>());
    }

    // R for the decimal point: IEC 60062. EIA-96 knows no 2R20.
    [Fact]
    public void What_is_taken_for_a_resistor_is_read_as_a_value_and_not_compared_with_chips()
    {
        var page = Page("R9");
        page.WaitForAssertion(() => Assert.Contains("“2R20” as a value code", page.Markup, StringComparison.Ordinal), Patience);
        Assert.Contains("2.2 Ω", page.Find("tr:has(th:contains('value code'))").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("pF", page.Markup, StringComparison.Ordinal);
        var spot = Bench.View("d", dossier => SpotView.Of(dossier, "R9"))!;
        Assert.True(spot.NoneP > 0.9, $"none of the lists holds it: {spot.NoneP}");
    }

    // 3p3 is 3.3 pF, u33 0.33 µF: IEC 60062. The reader has no small letters.
    [Fact]
    public void What_a_machine_read_on_a_capacitor_is_taken_in_every_way_and_a_typed_mark_counts_alone()
    {
        const string Read = """
            {"kind":"reading","spot":"C1","pictures":["cc"],"region":[5,4,10,8,0],"turn_deg":0,"lines":[[[["3",0.9],["U",0.1]],[["P",0.9]],[["3",0.9]]]],"readings":[[["3P3",0.8],["U33",0.1],["8P3",0.01]]],"networks":["aa","bb"],"settings":"s","program":"p"}
            """;
        Bench.Set("d", "D", """{"kind":"spot","spot":"C1","class":"capacitor"}""", Read.Trim());
        IEnumerable<string> Values() => Bench.View("d", dossier => SpotView.Of(dossier, "C1"))!.Measured.Where(row => row.What.Contains("value code", StringComparison.Ordinal)).Select(row => $"{row.What}: {row.Value}");
        Assert.Equal(["“3P3” as a value code: 3.3 pF (RKM, IEC 60062)", "“U33” as a value code: 330 nF (RKM, IEC 60062)"], Values());
        var row = Assert.Single(Bench.View("d", NameView.Of)!.Spots);
        Assert.Equal(("3|UP3", "read by the machine, 80 %"), (row.Mark, row.Elsewhere));
        Bench.Set("d", "D", """{"kind":"spot","spot":"C1","class":"capacitor"}""", Read.Trim(), """{"kind":"mark","spot":"C1","lines":["3p9"]}""");
        Assert.Equal(["“3p9” as a value code: 3.9 pF (RKM, IEC 60062)"], Values());
        row = Assert.Single(Bench.View("d", NameView.Of)!.Spots);
        Assert.Equal(("3p9", "the machine read 3|UP3, 80 %"), (row.Mark, row.Elsewhere));
        // Colour bands are typed as any mark: 1 kΩ ± 5 % by a worked example of a public chart of IEC 60062.
        Bench.Set("d", "D", """{"kind":"spot","spot":"C1","class":"resistor"}""", """{"kind":"mark","spot":"C1","lines":["brown black red gold"]}""");
        Assert.Equal("“brown black red gold” as a value code: 1 kΩ ± 5 % (4 bands, IEC 60062)", Values().First());
    }

    [Fact]
    public void Without_a_reason_nothing_is_stored_and_the_sentence_stands_beside_the_field()
    {
        var page = Page("U1");
        On(page, "[data-key=n]", e => e.Click());
        page.WaitForElement("form:has(#why)", Patience).Submit();
        page.WaitForAssertion(() => Assert.Contains("Say why in a few words; without a reason nobody can weigh it later.", page.Find("form:has(#why) .fault").TextContent, StringComparison.Ordinal), Patience);
        Assert.Empty(Stored<IdentityDecision>());
    }

    // The browser puts back what was under way when the page was loaded again: the verdict with its candidate, then the reason.
    [Fact]
    public void A_verdict_under_way_is_open_again_for_the_candidate_it_was_about()
    {
        var page = Page("U1");
        var second = page.FindAll("input[name=candidate]").Count > 1 ? Bench.View("d", dossier => SpotView.Of(dossier, "U1"))!.Candidates[1].Part : "";
        Assert.NotEmpty(second);
        Assert.Equal("", page.Find("input[type=hidden]").GetAttribute("value"));
        On(page, "input[type=hidden]", e => e.Input("Reject " + second));
        page.WaitForAssertion(() => Assert.Contains($"U1 is not {second}, because", page.Find("label[for=why]").TextContent, StringComparison.Ordinal), Patience);
        Assert.Equal("Reject " + second, page.Find("input[type=hidden]").GetAttribute("value"));
        On(page, "#why", e => e.Input("its pins are one too few"));
        On(page, "form:has(#why)", e => e.Submit());
        page.WaitForAssertion(() => Assert.Equal((Verdict.Reject, second), Assert.Single(Stored<IdentityDecision>().Select(each => (each.Verdict, each.Part)))), Patience);
        page.WaitForAssertion(() => Assert.Equal("", page.Find("input[type=hidden]").GetAttribute("value")), Patience);
    }

    [Theory]
    [InlineData("Accept no such part")]
    [InlineData("Burn nRF52832")]
    [InlineData("7 nRF52832")]
    [InlineData("")]
    public void A_draft_that_belongs_to_no_candidate_opens_nothing(string draft)
    {
        var page = Page("U1");
        On(page, "input[type=hidden]", e => e.Input(draft));
        Assert.Empty(page.FindAll("#why"));
    }

    [Fact]
    public void A_mark_with_alternatives_is_shown_with_them_wherever_it_is_told()
    {
        Bench.Set("d", "D", """{"kind":"mark","spot":"U2","lines":[[[["A",0.95]],[["E",0.475],["B",0.475]]],"W7"]}""");
        Assert.Equal("AE|B/W7", Assert.Single(Bench.View("d", NameView.Of)!.Spots).Mark);
        Assert.Equal("AE|B/W7", Assert.Single(Bench.View("d", dossier => dossier.Model.Identity("U2").Evidence.Told)!, told => told.Evidence == "mark").Says);
        Assert.Equal("mark on U2: AE|B/W7.", Lidoff.Weighing.Becauses.EntryWords.Say(Assert.Single(Stored<Lidoff.Seeing.Kinds.MarkSighting>())));
    }

    [Fact]
    public void In_no_list_is_a_verdict_like_any_other()
    {
        var page = Page("U1");
        On(page, "[data-key=n]", e => e.Click());
        page.WaitForElement("#why", Patience).Input("its pins fit none");
        On(page, "form:has(#why)", e => e.Submit());
        page.WaitForAssertion(() => Assert.Equal(Verdict.NotListed, Assert.Single(Stored<IdentityDecision>()).Verdict), Patience);
        Assert.Equal("part:U1", Services.GetRequiredService<Selection>().Reference);
    }

    // The suggestion stands in the empty field: typing over it must not double it, and Enter takes it.
    [Fact]
    public void The_family_of_the_chosen_candidate_is_offered_and_not_typed_into_the_field()
    {
        Bench.Set("d", "D", """{"kind":"mark","spot":"U1","lines":["N52832","QFAA?0"]}""");
        var page = Render<SpotPage>(parameters => parameters.Add(p => p.Name, "d").Add(p => p.Spot, "U1"));
        page.WaitForElement("#decide-head", Patience);
        On(page, "[data-key=f]", e => e.Click());
        page.WaitForElement("#why", Patience).Input("the lid is too worn for the rest");
        Assert.Equal("", page.Find("#family").GetAttribute("value") ?? "");
        var offered = page.Find("#family").GetAttribute("placeholder")!;
        Assert.StartsWith("nRF52", offered, StringComparison.Ordinal);
        On(page, "form:has(#why)", e => e.Submit());
        page.WaitForAssertion(() => Assert.Equal((Verdict.Family, offered), Stored<IdentityDecision>().Select(decision => (decision.Verdict, decision.Part)).Single()), Patience);
    }

    [Fact]
    public void A_family_is_accepted_with_the_member_left_open()
    {
        Bench.Set("d", "D", """{"kind":"spot","spot":"U5","role":"converter of the core"}""");
        var page = Render<SpotPage>(parameters => parameters.Add(p => p.Name, "d").Add(p => p.Spot, "U5"));
        page.WaitForElement("#decide-head", Patience);
        On(page, "[data-key=f]", e => e.Click());
        page.WaitForElement("#why", Patience).Input("coil and pads as in the maker's layout");
        On(page, "form:has(#why)", e => e.Submit());
        page.WaitForAssertion(() => Assert.Contains(KindSentences.FamilyTooShort.Say, page.Find("form:has(#why) .fault").TextContent, StringComparison.Ordinal), Patience);
        page.Find("#family").Input("TPS6274x");
        On(page, "form:has(#why)", e => e.Submit());
        page.WaitForAssertion(() => Assert.Contains("U5 is one of the family TPS6274x", page.Find("section:has(#decide-head) li").TextContent, StringComparison.Ordinal), Patience);
        var decided = Assert.Single(Stored<IdentityDecision>());
        Assert.Equal((Verdict.Family, "TPS6274x"), (decided.Verdict, decided.Part));
        // The page, the list of parts and their grade say the same.
        var shown = Bench.View("d", dossier => SpotView.Of(dossier, "U5"))!;
        Assert.Equal((Settled.Family, "family TPS6274x", Lidoff.Evidence.Grading.Grade.E1), (shown.Settled, shown.Says, shown.Grade));
        Assert.Equal(1, shown.Candidates.Concat(shown.Unlisted).Sum(candidate => candidate.P) + shown.OthersP + shown.NoneP, 5);
        Assert.All(shown.Candidates.Take(5), candidate => Assert.StartsWith("TPS6274", candidate.Part, StringComparison.Ordinal));
        var row = Assert.Single(Bench.View("d", NameView.Of)!.Spots);
        Assert.Equal((Settled.Family, "family TPS6274x", Lidoff.Evidence.Grading.Grade.E1, true), (row.Settled, row.Says, row.Grade, row.Decided));
    }

    [Fact]
    public void Marks_of_two_specimens_that_differ_stand_side_by_side()
    {
        Bench.Set("d", "D",
            """{"kind":"mark","spot":"U2","lines":["RV3028","2119"],"specimen":"A"}""",
            """{"kind":"mark","spot":"U2","lines":["RV3032","2207"],"specimen":"B"}""");
        var shown = Bench.View("d", dossier => SpotView.Of(dossier, "U2"))!;
        Assert.Equal([("A", true), ("B", true)], shown.Marks.Select(mark => (mark.Specimen, mark.Differs)));
        // The newest names it; what the other reads is said beside it, on the page and in the list.
        Assert.Equal(("B", "A reads RV3028/2119"), (shown.Specimen, Assert.Single(Bench.View("d", NameView.Of)!.Spots).Elsewhere));
        Assert.Contains("Specimen A reads RV3028/2119 there. That does not count for B: nobody said that the two are alike at U2.", shown.Remarks);
    }

    [Fact]
    public void Specimens_are_joined_by_a_word_with_its_reason()
    {
        Bench.Set("d", "D",
            """{"kind":"mark","spot":"U2","lines":["RV3028","2119"],"specimen":"A"}""",
            """{"kind":"mark","spot":"U2","lines":["RV3028","2207"],"specimen":"B"}""");
        var page = Render<SpotPage>(parameters => parameters.Add(p => p.Name, "d").Add(p => p.Spot, "U2"));
        page.WaitForElement("#alike", Patience).Input("same order on the boxes");
        On(page, "form:has(#alike)", e => e.Submit());
        page.WaitForAssertion(() => Assert.Equal(["B", "A"], Assert.Single(Stored<SpecimensAlike>()).Specimens), Patience);
        page.WaitForAssertion(() => Assert.Empty(page.FindAll("#alike")), Patience);
        Assert.Empty(Bench.View("d", dossier => SpotView.Of(dossier, "U2"))!.Remarks);
    }

    // Two letters unread leave a family open, and the body closes most of it: nRF52832 and nRF52810 come 6 × 6 mm, nRF52820 comes 5 × 5 mm (their
    // makers' product specifications, from memory).
    [Fact]
    public void What_removed_a_rival_is_its_worst_sighting()
    {
        Bench.Set("d", "D",
            """{"kind":"mark","spot":"U1","lines":["N528??"]}""",
            """{"kind":"body","spot":"U1","mm":[6.01,6.00],"u_mm":0.02}""",
            """{"kind":"pins","spot":"U1","count":48}""");
        var shown = Bench.View("d", dossier => SpotView.Of(dossier, "U1"))!;
        Assert.Equal("body", Assert.Single(shown.Rivals, rival => rival.Part == "nRF52820").Evidence);
        Assert.DoesNotContain(shown.Rivals, rival => rival.Part is "nRF52832" or "nRF52810");
        var candidates = Bench.View("d", dossier => dossier.Model.Identity("U1").Local.Candidates)!;
        foreach (var rival in shown.Rivals)
        {
            // Removed is less than one in a hundred, by a sighting that speaks against it two to one (3 decibans) or more: where the lines are is ours.
            Assert.True(rival.P < 0.01);
            Assert.True(rival.Decibans <= -3);
            var said = candidates.Single(candidate => candidate.Part.Name == rival.Part).Because;
            Assert.All(said, because => Assert.True(because.Db >= rival.Decibans));
            Assert.Contains(said, because => because.Evidence == rival.Evidence && because.Db == rival.Decibans);
        }
    }

    [Fact]
    public void Decibans_stand_in_columns_and_all_that_may_sit_there_makes_one()
    {
        Set();
        var shown = Bench.View("d", dossier => SpotView.Of(dossier, "U1"))!;
        Assert.Equal("nRF52832", shown.Candidates[0].Part);
        Assert.Equal(shown.Columns.Count, shown.Because[0].Decibans.Count);
        Assert.Contains("mark", shown.Because.Select(row => row.Evidence));
        // Probabilities of everything that may sit there make one.
        Assert.Equal(1, shown.Candidates.Sum(candidate => candidate.P) + shown.OthersP + shown.NoneP, 5);
    }

    private IRenderedComponent<SpotPage> Page(string spot)
    {
        Set();
        var page = Render<SpotPage>(parameters => parameters.Add(p => p.Name, "d").Add(p => p.Spot, spot));
        page.WaitForElement("#decide-head", Patience);
        return page;
    }

    // The mark and the 6 mm body are those of the QFN48 part in its maker's product specification (nRF52832, mechanical drawing and marking).
    private void Set() => Bench.Set("d", "D",
        """{"kind":"spot","spot":"U1","role":"radio and processor"}""",
        """{"kind":"mark","spot":"U1","lines":["N52832","QFAA?0"]}""",
        """{"kind":"body","spot":"U1","mm":[6.01,6.00],"u_mm":0.02}""",
        """{"kind":"spot","spot":"R9","class":"resistor"}""",
        """{"kind":"mark","spot":"R9","lines":["2R20"]}""");
}
