using Lidoff.Browser.Tests.Fixtures;
using Microsoft.Playwright;

namespace Lidoff.Browser.Tests.Walks;

/// <summary>Two windows, and a terminal, on one workspace: whatever one does, the others show.</summary>
public sealed class TwoWindowsTests(TheBrowser browser) : BrowserTest(browser)
{
    [Fact]
    public async Task One_window_follows_the_other_and_the_terminal()
    {
        var bench = await Bench("band");
        var (one, other) = (await Open(bench), await Open(bench, Look.Narrow));
        await one.Go("/");
        await other.Go("/");
        await one.Page.FillAsync("#new", "strap");
        await one.Page.PressAsync("#new", "Enter");
        await one.Arrives("/dossiers/strap/see");
        await Assertions.Expect(other.Page.Locator("table")).ToContainTextAsync("strap");

        await other.Go("/dossiers/band/name");
        await LiveBench.Command(bench.Folder, """{"kind":"mark","spot":"U7","lines":["N52832"]}""", "note", "band", "-");
        await Assertions.Expect(other.Page.Locator("main")).ToContainTextAsync("N52832");

        // What is taken back in one is gone in the other.
        await one.Go("/dossiers/band/see");
        await one.Page.SetInputFilesAsync("form[data-upload] input[type=file]", Files.Picture("front.png"));
        await other.Go("/dossiers/band/see");
        await Assertions.Expect(other.Page.Locator("main")).ToContainTextAsync("front.png");
        await one.Page.Locator("h1").ClickAsync();
        await one.Page.Keyboard.PressAsync("Control+z");
        await Assertions.Expect(other.Page.Locator("main")).Not.ToContainTextAsync("front.png");
    }
}
