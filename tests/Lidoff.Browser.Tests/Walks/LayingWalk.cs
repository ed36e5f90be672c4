using Lidoff.Browser.Tests.Fixtures;
using Lidoff.Evidence.Entries;
using Lidoff.Seeing.Kinds;
using Microsoft.Playwright;

namespace Lidoff.Browser.Tests.Walks;

/// <summary>Two sides of a board, those of the demo's main board, are laid on one another by what a machine finds in both: by keys alone, from the picture to the open book.</summary>
public sealed class LayingWalk(TheBrowser browser) : BrowserTest(browser)
{
    [Fact]
    public async Task Both_sides_of_a_board_are_laid_on_one_another_by_keys_and_their_landmarks_show()
    {
        var demo = await Browser.Demo;
        var bench = await Bench("band");
        var sides = new Dictionary<string, string>(StringComparer.Ordinal);
        // Taken from a slant: in the one from straight above, too few of the holes that both sides show are seen well enough to tell them from accident.
        foreach (var (side, name) in new[] { ("top", "brindle-main-top-tilted.png"), ("bottom", "brindle-main-bottom.png") })
        {
            var sha256 = sides[side] = demo.Stored("demo", session => session.View.Live<FileAdded>().First(file => file.Value.Name == name).Value.Sha256);
            File.Copy(Path.Combine(demo.Folder, "files", sha256[..2], sha256[2..]), Folder[name]);
            await LiveBench.Command(bench.Folder, "", "add", "band", Folder[name]);
            await LiveBench.Command(bench.Folder, $$"""{"kind":"picture","file":"{{name}}","side":"{{side}}"}""", "note", "band", "-");
        }

        var window = await Open(bench);
        await window.Go("/dossiers/band/see/" + sides["top"]);
        await window.Page.Keyboard.PressAsync("x");
        await window.Arrives($"/dossiers/band/see/{sides["top"]}/lay");
        await window.Page.Keyboard.PressAsync("f");
        var found = window.Page.Locator(".laying");
        await Assertions.Expect(found).ToContainTextAsync("from the other side", new() { Timeout = 120_000 });
        await Assertions.Expect(found.Locator(".pairs li")).Not.ToHaveCountAsync(0);
        var pairs = await found.Locator(".pairs li").CountAsync();
        foreach (var stage in await found.Locator(".stage").AllAsync()) await Assertions.Expect(stage.Locator("path.line.landmark")).ToHaveCountAsync(pairs);
        Assert.Empty(bench.Stored("band", session => session.View.Live<LandmarkSighting>().ToList()));

        await window.Page.Keyboard.PressAsync("a");
        await Assertions.Expect(found.Locator("input[type=checkbox]")).ToHaveCountAsync(0);
        await bench.Stored("band", "every landmark in both pictures", session => session.View.Live<LandmarkSighting>().Count == 2 * pairs);
        await Shoot(window, "taken over");
        await window.Page.Keyboard.PressAsync("u");
        await window.Arrives("/dossiers/band/see/" + sides["top"]);
        await Assertions.Expect(window.Page.Locator("#stage path.line.landmark")).ToHaveCountAsync(pairs);
        await window.Go("/dossiers/band/trace");
        await Assertions.Expect(window.Page.Locator("section:has(#book-head)")).ToContainTextAsync("Both lie on one board by ");
    }
}
