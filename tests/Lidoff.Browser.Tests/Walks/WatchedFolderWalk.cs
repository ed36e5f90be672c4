using Lidoff.Browser.Tests.Fixtures;
using Lidoff.Evidence.Entries;
using Microsoft.Playwright;

namespace Lidoff.Browser.Tests.Walks;

/// <summary>The folder a microscope writes to, watched from the page: slow files come whole and once, odd ones get a sentence.</summary>
public sealed class WatchedFolderWalk(TheBrowser browser) : BrowserTest(browser)
{
    [Fact]
    public async Task A_picture_written_slowly_comes_once_and_whole_and_what_is_none_is_said()
    {
        var bench = await Bench("band");
        var card = Folder["card"];
        Directory.CreateDirectory(card);
        var window = await Open(bench);
        // There is no small picture of the one that is cut off.
        window.Watch.Forgive("status of 404");
        await window.Go("/dossiers/band/see");
        var panel = window.Page.Locator("section.card", new() { HasText = "Watched folder" });

        // A folder that is not there is said, and stays typed to be put right.
        await window.Page.Locator("#watch").PressSequentiallyAsync(card + "x");
        await window.Page.PressAsync("#watch", "Enter");
        await Assertions.Expect(panel.Locator(".fault")).ToContainTextAsync("There is no folder “" + card + "x”");
        await Assertions.Expect(window.Page.Locator("#watch")).ToHaveValueAsync(card + "x");
        await window.Page.PressAsync("#watch", "Backspace");
        await window.Page.PressAsync("#watch", "Enter");
        var state = panel.GetByRole(AriaRole.Status);
        await Assertions.Expect(state).ToHaveTextAsync("Watching: 0 files taken in.");

        using (var writer = SlowWriter.Begin(Path.Combine(card, "front.png"), Files.Board))
        {
            await Assertions.Expect(state).ToHaveTextAsync("Watching: 0 files taken in, 1 still being written.");
            Assert.Empty(bench.Stored("band", session => session.View.Live<FileAdded>().ToList()));
        }

        await Assertions.Expect(window.Page.Locator("ul.pictures li")).ToContainTextAsync("600 × 400 px");
        await Assertions.Expect(state).ToHaveTextAsync("Watching: 1 file taken in.");

        // A broken one and words that call themselves a picture are kept and said; an empty one is not taken.
        await File.WriteAllBytesAsync(Path.Combine(card, "cut.png"), Files.Truncated.Buffer);
        await File.WriteAllBytesAsync(Path.Combine(card, "words.jpg"), Files.WordsAsPicture.Buffer);
        await File.WriteAllBytesAsync(Path.Combine(card, "empty.png"), []);
        // The same picture again under another name is not taken twice.
        await File.WriteAllBytesAsync(Path.Combine(card, "again.png"), Files.Board);
        await Assertions.Expect(panel).ToContainTextAsync("“cut.png” is a PNG picture whose pixels cannot be read to the end");
        await Assertions.Expect(panel).ToContainTextAsync("“empty.png” is empty and was not taken.");
        await Assertions.Expect(window.Page.Locator("ul.pictures li", new() { HasText = "words.jpg" })).ToContainTextAsync("41 bytes, text/plain");
        await Assertions.Expect(state).ToHaveTextAsync("Watching: 3 files taken in.");
        await Shoot(window, "odd");

        var files = bench.Stored("band", session => session.View.Live<FileAdded>().Select(file => file.Value).ToList());
        Assert.Equal(["cut.png", "front.png", "words.jpg"], files.Select(file => file.Name).Order(StringComparer.Ordinal));
        Assert.All(files, file => Assert.Equal("watch", file.From));
        Assert.Equal(Files.Board.Length, files.Single(file => file.Name == "front.png").Bytes);
        Assert.DoesNotContain("image", files.Single(file => file.Name == "words.jpg").Type, StringComparison.Ordinal);
        // Nothing in the folder was touched.
        Assert.Equal(["again.png", "cut.png", "empty.png", "front.png", "words.jpg"], Directory.EnumerateFiles(card).Select(path => Path.GetFileName(path)!).Order(StringComparer.Ordinal));

        await panel.GetByRole(AriaRole.Button, new() { Name = "Stop" }).ClickAsync();
        await Assertions.Expect(state).ToContainTextAsync("not watched any more");
    }
}
