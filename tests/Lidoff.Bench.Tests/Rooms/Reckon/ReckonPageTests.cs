using Bunit;
using Lidoff.Bench.Rooms.Reckon;
using Lidoff.Bench.Rooms.Reckon.Binding;
using Lidoff.Bench.Rooms.Reckon.Tree;
using Lidoff.Bench.Tests.Looking;
using Lidoff.Evidence.Folding;
using Lidoff.Reckoning.Bound;
using Lidoff.Weighing.Questions;

namespace Lidoff.Bench.Tests.Rooms.Reckon;

public sealed class ReckonPageTests : RoomContext
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    // Ohm's law of a divider: 3.3 V over 10 kΩ and 10 kΩ gives 1.65 V (Horowitz and Hill, The Art of Electronics, 1.2.3: Vout = Vin R2 / (R1 + R2)),
    // and half of the doubt: ± 0.05 V.
    [Fact]
    public void A_calculation_is_found_while_typing_previewed_before_it_is_stored_and_stored_on_enter()
    {
        Bench.Set("d", "D");
        var page = Page();
        On(page, "#calculation", e => e.Input("divider voltage"));
        page.WaitForAssertion(() => Assert.StartsWith("divider voltage", page.FindAll(".found .pick")[0].TextContent, StringComparison.Ordinal), Patience);
        Act(page, () => page.FindAll(".found .pick")[0].Click());
        page.WaitForElement("#in-voltage", Patience);
        On(page, "#in-voltage", e => e.Input("3.3 V ± 0.1"));
        On(page, "#in-upper", e => e.Input("10 kΩ"));
        On(page, "#in-lower", e => e.Input("10 kΩ"));
        page.WaitForAssertion(() => Assert.Contains("1.650 ± 0.050 V", page.Find(".preview").TextContent, StringComparison.Ordinal), Patience);
        Assert.Empty(Stored<ReckonBinding>());
        On(page, "form:has(.preview)", e => e.Submit());
        page.WaitForAssertion(() => Assert.Equal("R1", Assert.Single(Stored<ReckonBinding>()).Reckoning), Patience);
        page.WaitForAssertion(() => Assert.Contains("1.65", page.Find(".numbers .headline").TextContent, StringComparison.Ordinal), Patience);
    }

    [Fact]
    public async Task A_number_bound_to_a_question_of_the_board_answers_it_in_the_same_act()
    {
        Bench.Set("d", "D", """{"kind":"question","question":"Q1","text":"What is the tap at?","why":"it wakes the chip"}""");
        var page = Page();
        On(page, "#calculation", e => e.Input("divider voltage"));
        On(page, "form:has(#calculation)", e => e.Submit());
        page.WaitForElement("#in-voltage", Patience);
        On(page, "#bind-says", e => e.Input("What is the tap"));
        page.WaitForAssertion(() => Assert.Contains(ReckonSentences.NotAsked, page.Markup, StringComparison.Ordinal), Patience);
        On(page, "#bind-says", e => e.Input("what is the tap at?"));
        page.WaitForAssertion(() => Assert.DoesNotContain(ReckonSentences.NotAsked, page.Markup, StringComparison.Ordinal), Patience);
        On(page, "#in-voltage", e => e.Input("3.3 V"));
        On(page, "#in-upper", e => e.Input("10 kΩ"));
        On(page, "#in-lower", e => e.Input("10 kΩ"));
        On(page, "form:has(.preview)", e => e.Submit());
        page.WaitForAssertion(() => Assert.Equal(["reckoning:R1"], Asked().Ties), Patience);
        Assert.Equal("it wakes the chip", Asked().Why);
        await Hand.Undo("d");
        Assert.Empty(Asked().Ties);
        Assert.Empty(Stored<ReckonBinding>());
    }

    [Fact]
    public async Task What_was_clicked_as_a_shape_stands_among_what_was_measured()
    {
        Bench.Set("d", "D");
        var sha256 = (await Bench.Add("d", "p.png", new MemoryStream(GreyPng.Of(200, 100)), "drop", Xunit.TestContext.Current.CancellationToken)).Value.Sha256;
        Bench.Set("d", "D", $$"""{"kind":"scale","picture":"{{sha256}}","from":[0,50],"to":[200,50],"length_mm":20,"u_mm":0.01}""",
            $$"""{"kind":"shape","spot":"H1","shape":"circle","picture":"{{sha256}}","points":[[90,50],[110,50],[100,60]]}""");
        var page = Page();
        // 20 px across at 10 px/mm.
        page.WaitForAssertion(() => Assert.StartsWith("diameter of H1", page.Find("[aria-label='Table of what was measured'] tbody tr").TextContent, StringComparison.Ordinal), Patience);
        Assert.Matches(@"^(1\.9|2\.0)", page.Find("td[data-of=Value]").TextContent);
    }

    [Fact]
    public void A_number_does_not_take_the_name_of_a_resistor_and_takes_its_unit_as_the_field_prints_it()
    {
        Bench.Set("d", "D", """{"kind":"spot","spot":"R1","role":"resistor"}""", """{"kind":"mass","g":41.2}""", """{"kind":"state","name":"asleep","current_ua":1000}""");
        var page = Page();
        On(page, "#calculation", e => e.Input("runtime"));
        On(page, "form:has(#calculation)", e => e.Submit());
        page.WaitForElement("#in-capacity", Patience);
        On(page, "#in-capacity", e => e.Input("100 mAh"));
        // A mass is no current: a field is offered what it can take.
        Assert.Equal(["state:asleep"], Offered(page, "in-sleep_current"));
        Assert.Empty(Offered(page, "in-capacity"));
        On(page, "#in-sleep_current", e => e.Input("state:asleep"));
        On(page, "#in-event_charge", e => e.Input("0 µC"));
        On(page, "#in-event_rate", e => e.Input("12 1/h ± 2"));
        On(page, "form:has(.preview)", e => e.Submit());
        page.WaitForAssertion(() => Assert.Equal("R2", Assert.Single(Stored<ReckonBinding>()).Reckoning), Patience);
        // 100 mAh at 1 mA are a hundred hours.
        page.WaitForAssertion(() => Assert.Contains("100", page.Find(".numbers .headline").TextContent, StringComparison.Ordinal), Patience);
    }

    private QuestionAsked Asked() => Bench.View("d", dossier => dossier.Session.View.Newest<QuestionAsked>(question => question.Question).Single().Value)!;

    [Fact]
    public void What_is_wrong_with_an_input_stands_at_its_field_and_nothing_is_stored()
    {
        Bench.Set("d", "D");
        var page = Page();
        On(page, "#calculation", e => e.Input("runtime"));
        page.WaitForAssertion(() => Assert.StartsWith("runtime", page.FindAll(".found .pick")[0].TextContent, StringComparison.Ordinal), Patience);
        Act(page, () => page.FindAll(".found .pick")[0].Click());
        page.WaitForElement("#in-capacity", Patience);
        On(page, "#in-capacity", e => e.Input("310 metres"));
        page.WaitForAssertion(() => Assert.Contains("metres", page.Find(".field:has(#in-capacity) .fault").TextContent, StringComparison.Ordinal), Patience);
        On(page, "form:has(.preview)", e => e.Submit());
        page.WaitForAssertion(() => Assert.Contains("\"sleep current\" is missing", page.Find(".field:has(#in-sleep_current) .fault").TextContent, StringComparison.Ordinal), Patience);
        Assert.Equal("310 metres", page.Find("#in-capacity").GetAttribute("value"));
        page.WaitForAssertion(() => JSInterop.VerifyFocusAsyncInvoke(2), Patience); // the form's first line when it opened, then the first that is wrong
        Assert.Empty(Stored<ReckonBinding>());
    }

    [Fact]
    public void A_number_is_followed_down_to_the_entry_it_rests_on()
    {
        Bench.Set("d", "D",
            """{"kind":"length","spot":"J2","what":"span","mm":13.0,"u_mm":0.05}""",
            """{"kind":"reckon","reckoning":"R1","calculation":"pitch_from_span","inputs":{"span":{"from":"length:J2:span"},"pins":"14"},"says":"What pitch has the cable?"}""");
        var shown = Bench.View("d", dossier => NumberView.Of(dossier, "R1"))!;
        Assert.Empty(shown.Faults);
        // 14 leads span 13 pitches: 13.0 ± 0.05 mm by 13 is 1 ± 0.0038 mm (geometry).
        Assert.Equal("1.0000 ± 0.0038 mm", shown.Head.Value);
        var span = shown.Inputs.First(input => input.Key == "span");
        Assert.Equal("length:J2:span", span.Bound);
        Assert.Equal("length", Assert.Single(span.Sightings).Kind);
        Assert.Contains("span", shown.Improve, StringComparison.Ordinal);
        Assert.Equal("What pitch has the cable?", shown.Head.Says);
    }

    [Fact]
    public void Enter_takes_the_first_calculation_and_what_finds_none_is_said()
    {
        Bench.Set("d", "D");
        var page = Page();
        On(page, "#calculation", e => e.Input("xylophone"));
        page.WaitForAssertion(() => Assert.StartsWith("No calculation for \"xylophone\" yet.", page.Find("#found-says").TextContent.Trim(), StringComparison.Ordinal), Patience);
        On(page, "form:has(#calculation)", e => e.Submit());
        Assert.NotEmpty(page.FindAll("#calculation"));
        On(page, "#calculation", e => e.Input("runtime"));
        On(page, "form:has(#calculation)", e => e.Submit());
        page.WaitForElement("#in-capacity", Patience);
    }

    [Theory]
    [InlineData("length:U1:long side", true)]
    [InlineData("R2", true)]
    [InlineData("reckoning:R2", true)]
    [InlineData("122 mAh ± 6", false)]
    [InlineData("R", false)]
    [InlineData("3.3 V", false)]
    public void References_are_told_from_values(string typed, bool refers) => Assert.Equal(refers, InputWords.Refers(typed));

    [Fact]
    public void A_number_cannot_rest_on_itself()
    {
        Bench.Set("d", "D");
        var binding = BoundText.Binding("R1", "runtime", [("capacity", "reckoning:R1"), ("current", "3 mA")], "");
        var preview = Bench.View("d", dossier => BindPreview.Of(dossier, binding))!;
        Assert.Contains("rests on this very reckoning", Assert.Single(preview.Faults, fault => fault.Where == "capacity").Say, StringComparison.Ordinal);
    }

    private static IReadOnlyList<string?> Offered(IRenderedComponent<ReckonPage> page, string field) =>
        [.. page.FindAll($"datalist#{page.Find("#" + field).GetAttribute("list")} option").Select(each => each.GetAttribute("value"))];

    private IRenderedComponent<ReckonPage> Page()
    {
        var page = Render<ReckonPage>(parameters => parameters.Add(p => p.Name, "d"));
        page.WaitForElement("#calculation", Patience);
        return page;
    }
}
