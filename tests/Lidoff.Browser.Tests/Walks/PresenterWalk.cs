using Lidoff.Browser.Tests.Fixtures;
using Microsoft.Playwright;
using static Lidoff.Browser.Tests.Walks.Pointer;

namespace Lidoff.Browser.Tests.Walks;

/// <summary>The presenter window on a second screen: the picture and its labels, nothing else, led by the first window.</summary>
public sealed class PresenterWalk(TheBrowser browser) : BrowserTest(browser)
{
    [Fact]
    public async Task The_second_window_shows_picture_and_labels_alone_and_follows_the_first()
    {
        var bench = await Bench("band");
        var window = await Open(bench);
        await window.Go("/dossiers/band/see");
        await window.Page.SetInputFilesAsync("form[data-upload] input[type=file]", Files.Of("ruled.png", Files.Ruled));
        await window.Arrives("/dossiers/band/see/*");
        var (left, right) = await Squares(window.Page);
        await window.Page.GetByRole(AriaRole.Button, new() { Name = "Point", Exact = true }).ClickAsync();
        await Pointing(window);
        await ClickAt(window, left.X, left.Y);
        await Say(window, "radio beside the antenna");

        var present = await window.Page.RunAndWaitForPopupAsync(() => window.Page.Keyboard.PressAsync("w"));
        await Squares(present);
        await Labelled(present, "Picture with U1 radio beside the antenna", "U1");
        await Alone(present);
        await Keep(present, "first");

        // A label more, and its spot selected.
        await ClickAt(window, right.X, right.Y);
        await Say(window, "J flat cable");
        await Labelled(present, "Picture with J1 flat cable, U1 radio beside the antenna", "U1", "J1");
        await Assertions.Expect(present.Locator("text.name.on")).ToHaveTextAsync("J1");
        // Taken back again.
        await window.Page.Keyboard.PressAsync("Control+z");
        await Labelled(present, "Picture with U1 radio beside the antenna", "U1");

        // Nearer: both windows look at the same part of the picture.
        await window.Page.GetByRole(AriaRole.Button, new() { Name = "Zoom in" }).ClickAsync();
        await Patience.Until("both show the same width of the picture", async () => Math.Abs((await Apart(present) / await Apart(window.Page)) - 1) < 0.02);

        // Another picture, which has no labels yet.
        await window.Page.SetInputFilesAsync("form[data-upload] input[type=file]", Files.Picture("back.png"));
        await Assertions.Expect(present.Locator("h1")).ToHaveTextAsync("back.png");
        await Labelled(present, "Picture");
        await Alone(present);
        await Keep(present, "second");
        await Assertions.Expect(present.Locator("text.scalebar")).ToHaveCountAsync(0);
        Assert.EndsWith("/dossiers/band/present", present.Url, StringComparison.Ordinal);
    }

    // 400 px are 26 mm, so the picture's 600 are 39: of a 1, 2 or 5 the longest within 0.35 of that is 10 mm, at the bench as in the picture taken home.
    [Fact]
    public async Task A_picture_with_a_scale_carries_a_bar_of_a_round_length_and_the_window_does_not_scroll()
    {
        var bench = await Bench("band");
        File.WriteAllBytes(Folder["ruled.png"], Files.Ruled);
        await LiveBench.Command(bench.Folder, "", "add", "band", Folder["ruled.png"]);
        await LiveBench.Command(bench.Folder, """{"kind":"scale","picture":"ruled.png","from":[100,200],"to":[500,200],"length_mm":26,"u_mm":1}""", "note", "band", "-");
        foreach (var look in new[] { Look.Wide, Look.Narrow })
        {
            var window = await Open(bench, look);
            await window.Go("/dossiers/band/present");
            var (left, right) = await Squares(window.Page);
            var bar = window.Page.Locator("path.bar").Last;
            await Assertions.Expect(bar).ToBeAttachedAsync();
            // 1 mm of 26 is 3.8 %, which the eye can tell.
            var words = await window.Page.Locator("text.scalebar").TextContentAsync() ?? "";
            Assert.Matches(@"^(1|2|5)0? mm ± 3\.[89] %$", words);
            var drawn = await bar.EvaluateAsync<double>("path => path.getBBox().width");
            Assert.Equal(double.Parse(words.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture) / 26, drawn / (right.X - left.X), 2);
            Assert.StartsWith("10 mm ", words, StringComparison.Ordinal);
            var home = await window.Page.EvaluateAsync<string>("async () => (await fetch('/dossiers/band/labelled/' + document.querySelector('link[rel=preload]').getAttribute('href').split('/')[2] + '.svg')).text()");
            Assert.Contains("10 mm", home, StringComparison.Ordinal);
            Assert.True(await window.Page.EvaluateAsync<bool>("document.documentElement.scrollHeight <= innerHeight && document.documentElement.scrollWidth <= innerWidth"));
        }
    }

    [Fact]
    public async Task Until_a_picture_is_small_enough_to_show_the_stage_says_what_it_waits_for()
    {
        var bench = await Bench("band");
        File.WriteAllBytes(Folder["ruled.png"], Files.Ruled);
        await LiveBench.Command(bench.Folder, "", "add", "band", Folder["ruled.png"]);
        var window = await Open(bench);
        var go = new TaskCompletionSource();
        await window.Page.RouteAsync("**/thumbs/**", async route =>
        {
            await go.Task;
            await route.ContinueAsync();
        });
        await window.Page.GotoAsync(bench.Own + "/dossiers/band/present");
        await Assertions.Expect(window.Page.Locator(".stage .waits")).ToHaveTextAsync("Making the picture small enough to show; a large one takes a second or two.");
        go.SetResult();
        await Squares(window.Page);
        await Assertions.Expect(window.Page.Locator(".stage .waits")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task Before_there_is_a_picture_it_says_what_it_waits_for_and_then_shows_it()
    {
        var bench = await Bench("band");
        var (window, present) = (await Open(bench), await Open(bench, Look.Narrow));
        await present.Go("/dossiers/band/present");
        await Assertions.Expect(present.Page.Locator("main")).ToContainTextAsync("No picture yet.");
        await Alone(present.Page);
        await window.Go("/dossiers/band/see");
        await window.Page.SetInputFilesAsync("form[data-upload] input[type=file]", Files.Of("ruled.png", Files.Ruled));
        await Squares(present.Page);
        await Alone(present.Page);
        Assert.True(await present.Page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= 390);
    }

    private static async Task Labelled(IPage page, string says, params string[] names)
    {
        await Assertions.Expect(page.Locator(".stage")).ToHaveAttributeAsync("aria-label", says);
        await Assertions.Expect(page.Locator(".stage text.name")).ToHaveTextAsync(names, new() { UseInnerText = false });
    }

    // What a viewer sees or hears: one picture, a heading for those who hear it, and nothing to press, follow or fill in.
    private static async Task Alone(IPage page)
    {
        foreach (var role in new[] { AriaRole.Navigation, AriaRole.Banner, AriaRole.Complementary, AriaRole.Status, AriaRole.Link, AriaRole.Button, AriaRole.Textbox, AriaRole.Table, AriaRole.List, AriaRole.Dialog })
        {
            await Assertions.Expect(page.GetByRole(role)).ToHaveCountAsync(0);
        }
    }

    // As a share of the width that the picture is shown in.
    private static async Task<double> Apart(IPage page)
    {
        var (left, right) = await Squares(page);
        return (right.X - left.X) / (await page.Locator(".stage").First.BoundingBoxAsync())!.Width;
    }

    private static Task Keep(IPage page, string what) => page.ScreenshotAsync(new() { Path = Path.Combine(Root, "artifacts", "test", "shots", "PresenterWalk-" + what + ".png") });
}
