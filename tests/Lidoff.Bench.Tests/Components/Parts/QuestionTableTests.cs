using Bunit;
using Lidoff.Bench.Components.Parts;
using Lidoff.Bench.Data;
using Lidoff.Bench.Tests.Looking;
using Lidoff.Weighing.Questions;

namespace Lidoff.Bench.Tests.Components.Parts;

public sealed class QuestionTableTests : RoomContext
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    // 225 mAh over 0.6 mA are 375 h (charge over current).
    private static readonly string[] Lines =
    [
        """{"kind":"reckon","reckoning":"R1","calculation":"runtime","inputs":{"capacity":"225 mAh","sleep_current":"0.6 mA"},"says":"How long does it run?"}""",
        """{"kind":"question","question":"Q1","text":"How long does it run?"}""",
    ];

    [Theory]
    [InlineData("r1")]
    [InlineData("R1")]
    [InlineData("reckoning:R1")]
    public void A_reference_is_taken_as_people_type_it(string typed)
    {
        var page = Page();
        Tie(page, typed);
        page.WaitForAssertion(() => Assert.Equal(["reckoning:R1"], Stored<QuestionAsked>()[^1].Ties), Patience);
        page.WaitForAssertion(() => Assert.StartsWith("375", page.Find(".question strong").TextContent, StringComparison.Ordinal), Patience);
    }

    [Fact]
    public void What_can_never_have_a_value_is_refused_and_stays_to_be_put_right()
    {
        var page = Page();
        Tie(page, "runtime");
        page.WaitForAssertion(() => Assert.StartsWith("\"runtime\" names nothing in this dossier", page.Find(".question .fault").TextContent, StringComparison.Ordinal), Patience);
        Assert.Equal("runtime", page.Find(".question input").GetAttribute("value"));
        Tie(page, "");
        page.WaitForAssertion(() => Assert.StartsWith("Write what it leans on: R1, U3,", page.Find(".question .fault").TextContent, StringComparison.Ordinal), Patience);
        Assert.Empty(Stored<QuestionAsked>()[^1].Ties);
        // What nobody has measured yet may be tied: it says what to measure.
        Tie(page, "length:U1:width");
        page.WaitForAssertion(() => Assert.Equal(["length:U1:width"], Stored<QuestionAsked>()[^1].Ties), Patience);
        // Beside another tie a number says what it is, except where that is the question itself.
        Tie(page, "R1");
        page.WaitForAssertion(() => Assert.StartsWith("375", page.Find(".question strong").TextContent, StringComparison.Ordinal), Patience);
    }

    [Fact]
    public void A_number_that_says_it_answers_the_question_is_offered_once()
    {
        var page = Page();
        Act(page, () => page.FindAll(".question .act").Single(button => button.TextContent.Contains("R1", StringComparison.Ordinal)).Click());
        page.WaitForAssertion(() => Assert.Equal(["reckoning:R1"], Stored<QuestionAsked>()[^1].Ties), Patience);
        page.WaitForAssertion(() => Assert.DoesNotContain("says it answers", page.Markup, StringComparison.Ordinal), Patience);
    }

    [Fact]
    public async Task What_was_taken_back_still_says_what_it_was()
    {
        Bench.Set("d", "D", """{"kind":"spot","spot":"U1","role":"radio"}""");
        var spot = Bench.View("d", dossier => dossier.Session.View.Entries[^1].Entry)!;
        await Hand.TakeBack("d", spot.Id, "spot U1");
        var newest = Bench.View("d", DossierOverview.Of)!.Newest;
        Assert.Equal("taken back: spot.", newest[0].Say);
        Assert.Equal("spot U1, role radio.", newest[1].Say);
    }

    [Fact]
    public void Enter_in_the_field_of_words_answers_and_does_not_tie()
    {
        var page = Page();
        On(page, ".question input[aria-label^='Answer']", e => e.Input("because its crystal is near"));
        On(page, ".question form:has(input[aria-label^='Answer'])", e => e.Submit());
        page.WaitForAssertion(() => Assert.Equal("because its crystal is near", Stored<QuestionAsked>()[^1].Answer), Patience);
        Assert.Empty(page.FindAll(".question .fault"));
    }

    private static void Tie(IRenderedComponent<QuestionTable> page, string typed)
    {
        On(page, ".question input", e => e.Input(typed));
        On(page, ".question form", e => e.Submit());
    }

    private IRenderedComponent<QuestionTable> Page()
    {
        Bench.Set("d", "D", Lines);
        var page = Render<QuestionTable>(parameters => parameters.Add(p => p.Name, "d"));
        page.WaitForElement(".question input", Patience);
        return page;
    }
}
