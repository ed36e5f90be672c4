using Lidoff.Browser.Tests.Fixtures;
using Lidoff.Evidence.Entries;
using Microsoft.Playwright;

namespace Lidoff.Browser.Tests.Walks;

/// <summary>Files chosen in the room See: one that is stopped on the way, and some that are not what they say.</summary>
public sealed class UploadTests(TheBrowser browser) : BrowserTest(browser)
{
    private const string Input = "form[data-upload] input[type=file]";

    [Fact]
    public async Task Nothing_is_kept_of_an_upload_that_was_stopped()
    {
        var bench = await Bench("band");
        var window = await Open(bench);
        await window.Go("/dossiers/band/see");
        // 60 MB at 2 MB a second: time to find the button.
        var wire = await window.Context.NewCDPSessionAsync(window.Page);
        await wire.SendAsync("Network.enable");
        await wire.SendAsync("Network.emulateNetworkConditions", new Dictionary<string, object> { ["offline"] = false, ["latency"] = 0, ["downloadThroughput"] = -1, ["uploadThroughput"] = 2_000_000 });
        var large = Folder["large.bin"];
        await using (var file = File.Create(large)) file.SetLength(60_000_000);
        var before = Held(bench.Folder);

        await window.Page.SetInputFilesAsync(Input, large);
        var said = window.Page.Locator("form[data-upload] output");
        await Assertions.Expect(said).ToContainTextAsync("large.bin: ");
        await Assertions.Expect(said).ToContainTextAsync("%");
        await window.Page.ClickAsync("[data-stop]");
        await Assertions.Expect(said).ToHaveTextAsync("large.bin: stopped; nothing of it was kept.");

        Assert.Empty(bench.Stored("band", session => session.View.Live<FileAdded>().ToList()));
        // The server learns of it a moment later than the page.
        await Patience.Until("nothing more held than before", () => Task.FromResult(Held(bench.Folder) == before));
        Assert.DoesNotContain(bench.Said, line => line.Contains("large.bin", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_file_that_is_not_what_it_says_is_kept_and_gets_a_sentence()
    {
        var bench = await Bench("band");
        var window = await Open(bench);
        // Nothing is shown of the one that is cut off.
        window.Watch.Forgive("status of 404");
        await window.Go("/dossiers/band/see");
        await window.Page.SetInputFilesAsync(Input, new[] { Files.Truncated, Files.WordsAsPicture, Files.PictureAsWords, Files.TwoGigapixels });
        var said = window.Page.Locator("form[data-upload] output");
        await Assertions.Expect(said).ToContainTextAsync("4 added.");
        await Assertions.Expect(said).ToContainTextAsync("“cut.png” is a PNG picture whose pixels cannot be read to the end: cut off or damaged. Copy it again from where it came.");
        await Assertions.Expect(said).ToContainTextAsync("“huge.png” would have 50000 × 40000 pixels (2000 megapixels)");

        var files = bench.Stored("band", session => session.View.Live<FileAdded>().Select(file => file.Value).ToList());
        Assert.Equal(["cut.png", "words.jpg", "notes.txt", "huge.png"], files.Select(file => file.Name));
        Assert.Equal(["image/png", "image/png", "image/png"], files.Where(file => file.Name != "words.jpg").Select(file => file.Type));
        Assert.DoesNotContain("image", files.Single(file => file.Name == "words.jpg").Type, StringComparison.Ordinal);

        var page = window.Page.Locator("main");
        await Assertions.Expect(page).ToContainTextAsync("would have 50000 × 40000 pixels (2000 megapixels)");
        await Assertions.Expect(page).ToContainTextAsync("words.jpg");
        await Assertions.Expect(page).ToContainTextAsync("notes.txt");
    }

    // Files of the workspace that hold content, with their lengths; the database and what can be computed again aside.
    private static string Held(string folder) => string.Join('\n', Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories)
        .Where(path => path.Contains("/files/", StringComparison.Ordinal) || Path.GetFileName(path).StartsWith("incoming-", StringComparison.Ordinal)).Order(StringComparer.Ordinal));
}
