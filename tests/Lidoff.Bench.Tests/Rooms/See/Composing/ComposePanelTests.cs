using Bunit;
using Lidoff.Bench.Rooms.See.Composing;
using Lidoff.Bench.Tests.Looking;
using Lidoff.Bench.Working;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Composing;
using Lidoff.Seeing.Kinds;
using Microsoft.Extensions.DependencyInjection;

namespace Lidoff.Bench.Tests.Rooms.See.Composing;

public sealed class ComposePanelTests : RoomContext
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(10);

    [Fact]
    public async Task Pictures_are_chosen_in_order_and_what_they_come_to_is_stored_shown_and_can_be_taken_back()
    {
        ComposeOrder? asked = null;
        Make = (order, _) =>
        {
            asked = order;
            return Made(order) with { Second = GreyPng.Of(9, 5), Heights = (0, 0.1), HeightsInMm = true };
        };
        var panel = Panel("slice10.png", "slice2.png", "slice1.png", "other.png");
        // By number, not by letter.
        Assert.Equal(["other.png", "slice1.png", "slice2.png", "slice10.png"], panel.FindAll(".offered bdi").Select(e => e.TextContent));
        On(panel, "[data-draft=compose-named]", e => e.Input("SLICE"));
        Act(panel, () => panel.FindAll("button").First(b => b.TextContent.StartsWith("Take all 3", StringComparison.Ordinal)).Click());
        On(panel, ".chosen li:nth-child(3) button:nth-child(1)", e => e.Click());
        Assert.Equal(["slice1.png", "slice10.png", "slice2.png"], panel.FindAll(".chosen bdi").Select(e => e.TextContent));
        On(panel, "[data-draft=compose-step]", e => e.Input("0,05"));
        On(panel, "form", e => e.Submit());
        panel.WaitForElement(".made", Patience);
        Assert.Equal((ComposeMethod.Stack, 0.05), (asked!.Method, asked.StepMm));
        Assert.Equal(["slice1.png", "slice10.png", "slice2.png"], asked.Pictures.Select(each => each.Name));
        Assert.Contains("It went well.", panel.Find(".made").TextContent, StringComparison.Ordinal);

        var composed = Assert.Single(Stored<ComposedSighting>());
        Assert.Equal(asked.Pictures.Select(each => each.Sha256), composed.Inputs);
        Assert.Equal((0.457, "a test", true, (0, 0.1)), (composed.RestPx, composed.Program, composed.HeightsInMm, composed.Heights));
        var files = Stored<FileAdded>().Where(file => file.From == "composed").ToList();
        Assert.Equal([composed.Picture, composed.Second], files.Select(file => file.Sha256));
        Assert.Matches("^stack-[0-9a-f]{8}\\.png$", files[0].Name);
        Assert.Equal($"/dossiers/d/see/{composed.Picture}", panel.Find(".made a").GetAttribute("href"));

        await Hand.Undo("d");
        // What was made goes out of sight with its entry, and comes again with it; its bytes stay where they are, and the store holds.
        Assert.Empty(Stored<ComposedSighting>());
        Assert.DoesNotContain(Stored<FileAdded>(), file => file.From == "composed");
        panel.WaitForAssertion(() => Assert.Empty(panel.FindAll(".made")), Patience);
        Assert.True(Bench.Workspace.Files.Has(composed.Picture));
        Assert.Empty(Lidoff.Evidence.Store.Verifier.Run(Bench.Workspace).Value.Faults);
        await Hand.Redo("d");
        Assert.Equal(2, Stored<FileAdded>().Count(file => file.From == "composed"));
        Assert.Single(Stored<ComposedSighting>());
    }

    [Fact]
    public void What_was_said_alike_of_all_pictures_holds_for_what_is_made_of_them()
    {
        Make = (order, _) => Made(order);
        var panel = Panel("a.png", "b.png", "c.png");
        foreach (var (name, light) in new[] { ("a.png", "left"), ("b.png", "right"), ("c.png", "top") })
        {
            Bench.Set("d", "", $$"""{"kind":"picture","file":"{{name}}","specimen":"B","side":"bottom","zoom":"2x","light":"{{light}}"}""");
        }

        Act(panel, () => panel.FindAll("button").First(b => b.TextContent.StartsWith("Take all 3", StringComparison.Ordinal)).Click());
        On(panel, "form", e => e.Submit());
        panel.WaitForElement(".made", Patience);
        var made = Assert.Single(Stored<ComposedSighting>()).Picture;
        var tags = Assert.Single(Stored<PictureSighting>(), each => each.File == made);
        // Each was lit from elsewhere, and no camera was named.
        Assert.Equal((PictureSide.Bottom, "2x", "", ""), (tags.Side, tags.Zoom, tags.Light, tags.Camera));
    }

    [Fact]
    public void What_cannot_be_put_together_is_said_and_nothing_is_stored()
    {
        Make = (_, _) => new Fault("pictures", "slices", "These pictures are no focus stack.");
        var panel = Panel("a.png", "b.png", "c.png");
        Act(panel, () => panel.FindAll("button").First(b => b.TextContent.StartsWith("Take all 3", StringComparison.Ordinal)).Click());
        On(panel, "form", e => e.Submit());
        Assert.Equal("Not made: These pictures are no focus stack.", panel.WaitForElement(".doubt", Patience).TextContent);
        Assert.Empty(Stored<ComposedSighting>());
        Assert.Equal(3, Stored<FileAdded>().Count);
    }

    [Fact]
    public void A_job_says_how_far_it_is_and_can_be_stopped()
    {
        Make = (order, report) =>
        {
            report.Say(1, 4, "Comparing “b.png”");
            report.Stop.WaitHandle.WaitOne(Patience);
            report.Stop.ThrowIfCancellationRequested();
            return Made(order);
        };
        var panel = Panel("a.png", "b.png", "c.png");
        Act(panel, () => panel.FindAll("button").First(b => b.TextContent.StartsWith("Take all 3", StringComparison.Ordinal)).Click());
        On(panel, "form", e => e.Submit());
        panel.WaitForAssertion(() => Assert.Contains("focus stack of 3 slices: Comparing “b.png”", panel.Find(".job").TextContent, StringComparison.Ordinal), Patience);
        Assert.Equal("0.25", panel.Find("progress").GetAttribute("value"));
        On(panel, ".job button", e => e.Click());
        Assert.Contains("Stopped: focus stack of 3 slices.", panel.WaitForElement(".doubt", Patience).TextContent, StringComparison.Ordinal);
        Assert.Empty(Stored<ComposedSighting>());
    }

    [Fact]
    public void Too_few_pictures_cannot_be_sent_and_a_step_that_is_none_is_said()
    {
        var panel = Panel("a.png", "b.png", "c.png");
        Assert.Empty(panel.FindAll(".chosen li"));
        Assert.True(panel.Find("button[type=submit]").HasAttribute("disabled"));
        Act(panel, () => panel.FindAll("button").First(b => b.TextContent.StartsWith("Take all 3", StringComparison.Ordinal)).Click());
        Assert.False(panel.Find("button[type=submit]").HasAttribute("disabled"));
        On(panel, "[data-draft=compose-step]", e => e.Input("fine"));
        On(panel, "form", e => e.Submit());
        Assert.Equal(Lidoff.Numbers.Typed.TypedQuantity.Read("fine", Lidoff.Numbers.Quantities.Units.Millimetre, "step").Faults[0].Say, panel.Find(".fault").TextContent);
        On(panel, "[data-draft=compose-step]", e => e.Input("0 µm"));
        On(panel, "form", e => e.Submit());
        Assert.Equal(ComposeSentences.StepZero, panel.Find(".fault").TextContent);
        Assert.Null(Services.GetRequiredService<ComposeDesk>().Last("d"));
        // Two are enough for a stitch.
        Act(panel, () => panel.FindAll("input[type=radio]")[1].Change(true));
        On(panel, ".chosen li:nth-child(3) button:nth-child(3)", e => e.Click());
        Assert.False(panel.Find("button[type=submit]").HasAttribute("disabled"));
        Assert.Empty(panel.FindAll("[data-draft=compose-step]"));
    }

    [Fact]
    public void A_made_picture_says_of_what_and_an_erased_input_is_told()
    {
        var panel = Panel("a.png", "b.png", "c.png");
        var files = Stored<FileAdded>();
        Bench.Set("d", "", $$"""{"kind":"composed","picture":"{{files[0].Sha256}}","second":"{{files[1].Sha256}}","method":"stack","inputs":["{{files[2].Sha256}}","0123456789"],"settings":"s","program":"p","heights_mm":[0,-0.4],"says":["Look there."]}""");
        var made = Render<MadeOfPanel>(parameters => parameters.Add(each => each.Name, "d").Add(each => each.Sha256, files[0].Sha256));
        made.WaitForElement(".madeof", Patience);
        Assert.Contains("Focus stack of 2 pictures.", made.Markup, StringComparison.Ordinal);
        Assert.Contains("Look there.", made.Markup, StringComparison.Ordinal);
        Assert.Equal(["c.png", "01234567 no longer here"], made.FindAll("li").Select(e => e.TextContent.Trim()));
        var heights = Render<MadeOfPanel>(parameters => parameters.Add(each => each.Name, "d").Add(each => each.Sha256, files[1].Sha256));
        Assert.Contains("Heights of a focus stack: black is 0, white is -0.4 mm towards the camera from the first slice's focus.", heights.WaitForElement(".madeof", Patience).TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Its_list_is_made_when_it_is_opened_and_not_before()
    {
        Panel("a.png", "b.png");
        Assert.Empty(Bench.View("d", dossier => ComposeView.Of(dossier, open: false))!.Pictures);
        Assert.Equal(["a.png", "b.png"], Bench.View("d", dossier => ComposeView.Of(dossier, open: true))!.Pictures.Select(each => each.Name));
    }

    [Fact]
    public async Task What_was_made_is_taken_back_with_its_file_where_it_says_of_what_it_was_made()
    {
        Panel("a.png", "b.png");
        using var body = new MemoryStream(GreyPng.Of(20, 20));
        var made = (await Bench.Add("d", "stack.png", body, ComposeDesk.From, Xunit.TestContext.Current.CancellationToken)).Value.Sha256;
        var files = Stored<FileAdded>();
        Bench.Set("d", "", $$"""{"kind":"composed","picture":"{{made}}","method":"stitch","inputs":["{{files[0].Sha256}}","{{files[1].Sha256}}"],"settings":"s","program":"p"}""");
        var panel = Render<MadeOfPanel>(parameters => parameters.Add(each => each.Name, "d").Add(each => each.Sha256, made));
        panel.WaitForElement(".madeof", Patience);
        Assert.Contains(ComposeSentences.TakeBackHint, panel.Markup, StringComparison.Ordinal);
        Act(panel, () => panel.Find(".madeof > button").Click());
        panel.WaitForAssertion(() => Assert.Empty(Stored<ComposedSighting>()), Patience);
        Assert.Equal(["a.png", "b.png"], Stored<FileAdded>().Select(file => file.Name));
    }

    private static Composition Made(ComposeOrder order) => new()
    {
        Picture = GreyPng.Of(8, 6), Inputs = [.. order.Pictures.Select(each => each.Sha256)], Settings = "s", Program = "a test", FirstAt = (0, 0), RestPx = 0.45678, Says = ["It went well."],
    };

    private IRenderedComponent<ComposePanel> Panel(params string[] names)
    {
        Bench.Set("d", "");
        for (var i = 0; i < names.Length; i++)
        {
            using var body = new MemoryStream(GreyPng.Of(40 + i, 30));
            Assert.True(Bench.Add("d", names[i], body, "drop", Xunit.TestContext.Current.CancellationToken).GetAwaiter().GetResult().Ok);
        }

        var panel = Render<ComposePanel>(parameters => parameters.Add(each => each.Name, "d"));
        On(panel, "[data-key=y]", e => e.Click());
        panel.WaitForElement("form", Patience);
        return panel;
    }
}
