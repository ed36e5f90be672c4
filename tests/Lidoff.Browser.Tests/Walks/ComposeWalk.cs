using System.Diagnostics;
using Lidoff.Browser.Tests.Fixtures;
using Lidoff.BrowserSupport;
using Lidoff.Evidence.Entries;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Rendering;
using Microsoft.Playwright;

namespace Lidoff.Browser.Tests.Walks;

/// <summary>Two tiles of a board become one picture in the built program, by keyboard alone, on a narrow window and in the dark too; where the vision library is missing the room says so.</summary>
public sealed class ComposeWalk(TheBrowser browser) : BrowserTest(browser)
{
    [Fact]
    public async Task Two_tiles_are_stitched_by_keyboard_and_the_library_is_not_touched_before()
    {
        using (var build = Process.Start(Path.Combine(Root, "lidoff"), "--version")) await build.WaitForExitAsync();
        var workspace = await Tiles();
        var program = await BuiltProgram.Start(Path.Combine(Root, "artifacts", "lidoff", "lidoff"), "bench", "--no-browser", "--port", "0", "--workspace", workspace);
        Keep(program);
        var bench = LiveBench.Elsewhere(program.Address, workspace);
        var window = await Open(bench);
        await window.Go("/dossiers/band/see");
        Assert.DoesNotContain("OpenCvSharpExtern", await File.ReadAllTextAsync($"/proc/{program.Id}/maps"), StringComparison.Ordinal);

        await window.Page.Keyboard.PressAsync("y");
        var panel = window.Page.Locator("section.compose");
        await Assertions.Expect(panel.GetByRole(AriaRole.Radio, new() { Name = "Focus stack" })).ToBeCheckedAsync();
        await panel.GetByRole(AriaRole.Radio, new() { Name = "Focus stack" }).FocusAsync();
        await window.Page.Keyboard.PressAsync("ArrowRight");
        await Assertions.Expect(panel.GetByRole(AriaRole.Radio, new() { Name = "Stitch" })).ToBeCheckedAsync();
        foreach (var tile in new[] { "tile1.png", "tile2.png" })
        {
            await panel.GetByRole(AriaRole.Checkbox, new() { Name = tile }).FocusAsync();
            await window.Page.Keyboard.PressAsync("Space");
        }

        await Assertions.Expect(panel.Locator(".chosen li")).ToHaveCountAsync(2);
        await Bears(window, "open");
        await panel.GetByRole(AriaRole.Button, new() { Name = "Make it" }).FocusAsync();
        await window.Page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(panel.Locator(".made")).ToContainTextAsync("2 tiles by 1 overlaps:", new() { Timeout = 60_000 });
        await Assertions.Expect(panel.Locator(".made")).ToContainTextAsync("no loop of tiles closes, so nothing checks how they add up.");
        Assert.Contains("OpenCvSharpExtern", await File.ReadAllTextAsync($"/proc/{program.Id}/maps"), StringComparison.Ordinal);
        await Bears(window, "made");

        var (made, file) = bench.Stored("band", session => (session.View.Live<ComposedSighting>().Single().Value, session.View.Live<FileAdded>().Select(each => each.Value).Single(each => each.From == "composed")));
        Assert.Equal(file.Sha256, made.Picture);
        await panel.GetByRole(AriaRole.Link, new() { Name = "The picture" }).FocusAsync();
        await window.Page.Keyboard.PressAsync("Enter");
        await window.Arrives("/dossiers/band/see/" + made.Picture);
        await Assertions.Expect(window.Page.Locator(".madeof")).ToContainTextAsync("Stitch of 2 pictures.");
        // Opened anew: what leads past the page's head still names the page before where one came here by a link.
        await window.Go("/dossiers/band/see/" + made.Picture);
        await Assertions.Expect(window.Page.Locator(".madeof")).ToContainTextAsync("no loop of tiles closes");
        await Bears(window, "picture");
    }

    [Fact]
    public async Task Where_the_library_is_missing_the_room_says_what_is_off_and_does_the_rest()
    {
        // This test's own program has the library's file nowhere beside it.
        var workspace = await Tiles();
        var bench = await Bench(workspace, 0);
        var window = await Open(bench, Look.Narrow);
        await window.Go("/dossiers/band/see");
        await window.Page.Keyboard.PressAsync("y");
        var panel = window.Page.Locator("section.compose");
        await panel.GetByRole(AriaRole.Radio, new() { Name = "Average" }).CheckAsync();
        await panel.GetByRole(AriaRole.Button, new() { Name = "Take all 2" }).ClickAsync();
        await panel.GetByRole(AriaRole.Button, new() { Name = "Make it" }).ClickAsync();
        await Assertions.Expect(panel.Locator(".doubt")).ToContainTextAsync("Focus stacks, stitching, light sets and averages are off on this machine; everything else of the room works.");
        await Bears(window, "missing");
        await window.Page.Locator("ul.pictures h2 a").First.ClickAsync();
        await window.Arrives("/dossiers/band/see/*");
        Assert.Empty(bench.Stored("band", session => session.View.Live<ComposedSighting>().ToList()));
    }

    /// <summary>A dossier with two tiles of the invented board, each from a camera of its own.</summary>
    private async Task<string> Tiles()
    {
        var workspace = Folder["workspace"];
        await LiveBench.Command(workspace, "", "new", "band");
        foreach (var (name, x) in new[] { ("tile1.png", 8.5), ("tile2.png", 17.5) })
        {
            await using (var file = File.Create(Folder[name]))
            {
                SceneRenderer.Render(Brindle.MainTop() with { LookAt = (x, 9 + (x / 90)), TurnDegrees = x / 20, Width = 640, Height = 480, PxPerMm = 40, Title = "", RulerMm = 0, Uneven = 0.2 }).WritePng(file);
            }

            await LiveBench.Command(workspace, "", "add", "band", Folder[name]);
        }

        return workspace;
    }
}
