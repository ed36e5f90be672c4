using Bunit;
using Lidoff.Bench.Rooms.Open;
using Lidoff.Bench.Tests.Looking;
using Lidoff.Opening.Cautioning;
using Lidoff.Opening.Kinds;

namespace Lidoff.Bench.Tests.Rooms.Open;

public sealed class OpenPageTests : RoomContext
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(10);

    [Fact]
    public async Task A_step_is_one_line_and_can_be_taken_back()
    {
        var page = Page();
        On(page, "#step", e => e.Input("cut the seam #cut @scalpel 4min !seal"));
        On(page, "form:has(#step)", e => e.Submit());
        page.WaitForAssertion(() => Assert.Contains("Take back step 1", page.Markup, StringComparison.Ordinal), Patience);
        Assert.Equal(new StepSighting("cut the seam", StepAct.Cut, "scalpel", "", 4, "seal", ""), Assert.Single(Stored<StepSighting>()));
        Assert.Equal("", page.Find("#step").GetAttribute("value"));
        await Hand.Undo("d");
        page.WaitForAssertion(() => Assert.DoesNotContain("Take back step 1", page.Markup, StringComparison.Ordinal), Patience);
        Assert.Empty(Stored<StepSighting>());
        await Hand.Redo("d");
        Assert.Single(Stored<StepSighting>());
    }

    [Fact]
    public void Cautions_stand_there_before_anything_is_stored()
    {
        var page = Page();
        Assert.Empty(page.FindAll(".cautions"));
        On(page, "#step", e => e.Input("cut the se"));
        Assert.Contains("Blades and ultrasonic cutters slip.", page.Find("form:has(#step) .cautions").TextContent, StringComparison.Ordinal);
        On(page, "#step", e => e.Input("open it"));
        Assert.Empty(page.FindAll(".cautions"));
        On(page, "form:has(#step) select", e => e.Change("pry"));
        Assert.Contains("Is the cell out, or at least disconnected?", page.Find(".cautions").TextContent, StringComparison.Ordinal);
        Assert.Equal("open it #pry", page.Find("#step").GetAttribute("value"));
        Assert.Empty(Stored<StepSighting>());
    }

    [Fact]
    public void The_question_of_the_cell_is_not_asked_once_it_is_answered()
    {
        Bench.Set("d", "", """{"kind":"cell","connected":false}""");
        var page = Page();
        On(page, "#step", e => e.Input("pry the lid"));
        Assert.DoesNotContain("Is the cell out", page.Find(".cautions").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_wrong_stands_beside_the_line_and_the_line_stays()
    {
        var page = Page();
        On(page, "#step", e => e.Input("saw it #saw"));
        On(page, "form:has(#step)", e => e.Submit());
        Assert.Contains("There is no act \"saw\"", page.WaitForElement("form:has(#step) .fault", Patience).TextContent, StringComparison.Ordinal);
        Assert.Equal("saw it #saw", page.Find("#step").GetAttribute("value"));
        Assert.Empty(Stored<StepSighting>());
    }

    [Fact]
    public void One_press_says_that_the_cell_is_out()
    {
        Bench.Set("d", "", """{"kind":"cell","spot":"B1","connected":true}""");
        var page = Page();
        On(page, ".resume [data-key=c]", e => e.Click());
        page.WaitForAssertion(() => Assert.Contains("Disconnected", page.Find(".resume").TextContent, StringComparison.Ordinal), Patience);
        Assert.Equal([true, false], Stored<CellSighting>().Select(cell => cell.Connected!.Value));
        Assert.Equal("B1", Stored<CellSighting>()[^1].Spot);
    }

    [Fact]
    public void One_press_carries_a_plan_out_and_ticks_are_stored()
    {
        var page = Page();
        On(page, "#plan", e => e.Input("cut the seam #cut !the seal ?mass:whole"));
        On(page, "form:has(#plan)", e => e.Submit());
        page.WaitForAssertion(() => Assert.Contains("Done all the same", page.Find(".plan").TextContent, StringComparison.Ordinal), Patience);
        On(page, ".plan input[type=checkbox]", e => e.Change(true));
        page.WaitForAssertion(() => Assert.DoesNotContain("all the same", page.Find(".plan").TextContent, StringComparison.Ordinal), Patience);
        On(page, ".plan .act", e => e.Click());
        page.WaitForAssertion(() => Assert.Empty(page.FindAll(".plan")), Patience);
        Assert.Equal(new StepSighting("cut the seam", StepAct.Cut, "", "", null, "the seal", "", "P1"), Assert.Single(Stored<StepSighting>()));
    }

    [Fact]
    public void A_field_is_put_right_where_it_stands_and_the_rest_stays()
    {
        Bench.Set("d", "", """{"kind":"specimen","specimen":"A","says":"band","mass_g":23.4,"u_g":0.05,"bought":"2026-01-12"}""");
        var page = Page();
        On(page, "button[aria-label^='Mass of A']", e => e.Click());
        page.WaitForElement("form.inplace input", Patience).Input("23,6 g");
        On(page, "form.inplace", e => e.Submit());
        page.WaitForAssertion(() => Assert.Contains("23.600 ± 0.050 g", page.Markup, StringComparison.Ordinal), Patience);
        Assert.Equal(new SpecimenSighting("A", "band", "", new DateOnly(2026, 1, 12), "", null, 23.6, 0.05), Assert.Single(Stored<SpecimenSighting>()));
    }

    [Fact]
    public void A_day_that_is_none_is_refused_in_place()
    {
        Bench.Set("d", "", """{"kind":"specimen","specimen":"A"}""");
        var page = Page();
        On(page, "button[aria-label^='Day A']", e => e.Click());
        page.WaitForElement("form.inplace input", Patience).Input("last week");
        On(page, "form.inplace", e => e.Submit());
        page.WaitForAssertion(() => Assert.Contains("a day such as", page.Find("form.inplace .fault").TextContent, StringComparison.Ordinal), Patience);
        Assert.Equal("last week", page.Find("form.inplace input").GetAttribute("value"));
    }

    [Fact]
    public void The_bench_is_left_with_what_was_ticked_and_in_hand()
    {
        var page = Page();
        On(page, ".closing input[type=checkbox]", e => e.Change(true));
        On(page, "#in-hand", e => e.Input("the flat cable"));
        On(page, "#next", e => e.Input("picture the back"));
        On(page, "form.closing", e => e.Submit());
        page.WaitForAssertion(() => Assert.Contains("the flat cable", page.Find(".resume").TextContent, StringComparison.Ordinal), Patience);
        var left = Assert.Single(Stored<BenchLeft>());
        Assert.Equal(["heat-off", "in-hand-noted"], left.Checked);
        Assert.Equal(("the flat cable", "picture the back"), (left.InHand, left.Next));
        Assert.Equal("", page.Find("#in-hand").GetAttribute("value"));
    }

    [Fact]
    public void A_cell_that_is_known_to_be_out_needs_no_tick_on_leaving()
    {
        Bench.Set("d", "", """{"kind":"cell","connected":false}""");
        var page = Page();
        On(page, "form.closing", e => e.Submit());
        page.WaitForAssertion(() => Assert.Single(Stored<BenchLeft>()), Patience);
        Assert.Equal(["cell-disconnected"], Stored<BenchLeft>()[0].Checked);
    }

    [Fact]
    public void States_and_masses_are_one_line_each()
    {
        var page = Page();
        On(page, "#state", e => e.Input("idle: nothing lit, 6.1 µA ± 0.4"));
        On(page, "form:has(#state)", e => e.Submit());
        page.WaitForAssertion(() => Assert.Contains("6.10 ± 0.40 µA", page.Markup, StringComparison.Ordinal), Patience);
        On(page, "#mass", e => e.Input("B1 3.61"));
        On(page, "form:has(#mass)", e => e.Submit());
        page.WaitForAssertion(() => Assert.Contains("The whole was not weighed; the parts are 3.61 g together.", page.Markup, StringComparison.Ordinal), Patience);
        Assert.Equal(new StateSighting("idle", "nothing lit", "", "", null, 6.1, 0.4), Assert.Single(Stored<StateSighting>()));
        Assert.Equal(new MassSighting("B1", 3.61, 0.01), Assert.Single(Stored<MassSighting>()));
    }

    [Fact]
    public void A_field_stays_where_it_is_while_somebody_types_though_the_first_specimen_changes_the_order_of_the_work()
    {
        var page = Page();
        var before = page.FindAll("input[id]").Select(e => e.Id).ToList();
        Assert.Equal("specimen", before[0]);
        On(page, "#state", e => e.Input("idle: noth"));
        On(page, "#specimen", e => e.Input("A band"));
        On(page, "form:has(#specimen)", e => e.Submit());
        page.WaitForAssertion(() => Assert.Contains("Take back specimen A", page.Markup, StringComparison.Ordinal), Patience);
        Assert.Equal(before, page.FindAll("input[id]").Select(e => e.Id));
        Assert.Equal("idle: noth", page.Find("#state").GetAttribute("value"));
        // Whoever comes back later finds the next act on top.
        var again = Page();
        Assert.Equal("plan", again.FindAll("input[id]")[0].Id);
    }

    [Fact]
    public void A_mass_goes_to_the_step_it_is_typed_with_or_chosen_for_and_to_no_other()
    {
        var page = Page();
        On(page, "#step", e => e.Input("lifted the board B1=3.61g"));
        On(page, "form:has(#step)", e => e.Submit());
        page.WaitForAssertion(() => Assert.Contains("B1 3.61 g", page.Find(".steps").TextContent, StringComparison.Ordinal), Patience);
        On(page, "#mass", e => e.Input("CASE 11.5 g"));
        On(page, "form:has(#mass)", e => e.Submit());
        page.WaitForAssertion(() => Assert.Equal(2, Stored<MassSighting>().Count), Patience);
        page.WaitForAssertion(() => Assert.NotNull(page.Find("select[aria-label='Step at which CASE was weighed']")), Patience);
        Assert.DoesNotContain("CASE", page.Find(".steps").TextContent, StringComparison.Ordinal);

        // Chosen afterwards, it stands there; the one in the step's own line was there from the start.
        var step = page.Find("select[aria-label='Step at which B1 was weighed']").GetAttribute("value");
        Assert.Equal(64, step!.Length);
        On(page, "select[aria-label='Step at which CASE was weighed']", e => e.Change(step));
        page.WaitForAssertion(() => Assert.Contains("CASE 11.5 g", page.Find(".steps").TextContent, StringComparison.Ordinal), Patience);

        // And the step chosen beside the line is where what is typed there belongs.
        On(page, "form:has(#mass) select", e => e.Change(step));
        On(page, "#mass", e => e.Input("LID 2 g"));
        On(page, "form:has(#mass)", e => e.Submit());
        page.WaitForAssertion(() => Assert.Contains("LID 2 g", page.Find(".steps").TextContent, StringComparison.Ordinal), Patience);
    }

    [Fact]
    public void After_the_cell_came_out_its_state_is_asked_for_and_never_taken_from_the_words()
    {
        Bench.Set("d", "", """{"kind":"cell","spot":"B1","connected":true}""");
        var page = Page();
        Assert.Empty(page.FindAll(".cell-asked"));
        On(page, "#step", e => e.Input("cell out"));
        On(page, "form:has(#step)", e => e.Submit());
        page.WaitForAssertion(() => Assert.Contains(OpenSentences.CellAsked, page.Find(".cell-asked").TextContent, StringComparison.Ordinal), Patience);
        Assert.Contains("stands since \"cell out\"", page.Find(".resume").TextContent, StringComparison.Ordinal);
        Assert.Single(Stored<CellSighting>());
        On(page, ".cell-asked [data-key='alt+c']", e => e.Click());
        page.WaitForAssertion(() => Assert.Empty(page.FindAll(".cell-asked")), Patience);
        Assert.Equal(("B1", false), (Stored<CellSighting>()[^1].Spot, Stored<CellSighting>()[^1].Connected!.Value));
        Assert.Contains("Disconnected", page.Find(".resume").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Hostile_text_is_text()
    {
        Bench.Set("d", "",
            """{"kind":"specimen","specimen":"<u>","says":"<script>alert(1)</script> \u202E"}""",
            """{"kind":"state","name":"<i>","lights":"<b>"}""",
            """{"kind":"step","does":"<script>alert(2)</script>","tool":"\u0007"}""",
            """{"kind":"plan","plan":"<p>","does":"<img src=x>","destroys":"<s>","record_first":["<q>"]}""",
            """{"kind":"mass","spot":"<em>","g":1}""",
            """{"kind":"pause","in_hand":"<script>alert(3)</script>"}""");
        var page = Page();
        page.WaitForAssertion(() => Assert.Contains("alert(3)", page.Markup, StringComparison.Ordinal), Patience);
        Assert.Empty(page.FindAll("script, img[src=x], u, b:empty, s, q, em"));
        Assert.DoesNotContain("\u202E", page.Markup, StringComparison.Ordinal);
        Assert.DoesNotContain("\u0007", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void Leaving_once_more_with_empty_fields_keeps_what_was_in_hand()
    {
        var page = Page();
        page.Find("#in-hand").Input("the flat cable");
        page.Find("#next").Input("lift it");
        On(page, "form.closing", e => e.Submit());
        page.WaitForAssertion(() => Assert.Single(Stored<BenchLeft>()), TimeSpan.FromSeconds(20));
        page.WaitForAssertion(() => Assert.Contains("the flat cable", page.Find(".resume").TextContent, StringComparison.Ordinal), TimeSpan.FromSeconds(20));
        On(page, "form.closing", e => e.Submit());
        page.WaitForAssertion(() => Assert.Equal(2, Stored<BenchLeft>().Count), TimeSpan.FromSeconds(20));
        Assert.Equal(("the flat cable", "lift it"), (Stored<BenchLeft>()[^1].InHand, Stored<BenchLeft>()[^1].Next));
    }

    private IRenderedComponent<OpenPage> Page()
    {
        Bench.Set("d", "");
        var page = Render<OpenPage>(p => p.Add(o => o.Name, "d"));
        page.WaitForAssertion(() => page.Find("#step"), Patience);
        return page;
    }
}
