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
        // One thing of each: three have something to say, the fourth was simply added.
        await Assertions.Expect(said).ToContainTextAsync("\n1 added.");
        await Assertions.Expect(said).ToContainTextAsync("“cut.png” is a PNG picture whose pixels cannot be read to the end: cut off or damaged. Copy it again from where it came. What came of it is stored all the same.");
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

    [Fact]
    public async Task The_same_picture_under_another_name_is_said_to_be_there_and_leads_to_where_it_is()
    {
        var bench = await Bench("band");
        await LiveBench.Command(bench.Folder, "", "add", "band", Kept(Files.Picture("board.png")));
        var window = await Open(bench);
        await window.Go("/dossiers/band/see");
        await window.Page.SetInputFilesAsync(Input, Files.Picture("copy.png"));
        var said = window.Page.Locator("form[data-upload] output");
        await Assertions.Expect(said).ToHaveTextAsync("“copy.png” is here already, byte for byte, as “board.png”; nothing was added. Show it");
        Assert.Equal(["board.png"], bench.Stored("band", session => session.View.Live<FileAdded>().Select(file => file.Value.Name).ToList()));
        await said.Locator("a").ClickAsync();
        await Assertions.Expect(window.Page.Locator("h1")).ToContainTextAsync("board.png");
    }

    [Fact]
    public async Task A_file_dropped_while_the_page_is_still_changing_is_spoken_of_on_the_page_that_comes()
    {
        var bench = await Bench("band");
        await LiveBench.Command(bench.Folder, "", "add", "band", Kept(Files.Picture("board.png")));
        var window = await Open(bench);
        await window.Go("/dossiers/band/see");
        // In one breath: the link, and a file on the form that the page to come will take away.
        await window.Page.EvaluateAsync("""
            () => {
              const files = new DataTransfer();
              files.items.add(new File(['Board revision B, measured on the bench.'], 'words.jpg'));
              document.querySelector('.picture h2 a').click();
              document.dispatchEvent(new DragEvent('drop', { dataTransfer: files, bubbles: true, cancelable: true }));
            }
            """);
        await Assertions.Expect(window.Page.Locator("h1")).ToContainTextAsync("board.png");
        await Assertions.Expect(window.Page.Locator("form[data-upload] output")).ToContainTextAsync("“words.jpg” is called a picture");
        // Another page begins without it.
        await window.Page.Locator("h1 a").ClickAsync();
        await window.Arrives("/dossiers/band/see");
        await Assertions.Expect(window.Page.Locator("form[data-upload] output")).ToHaveTextAsync("");
    }

    private string Kept(FilePayload file)
    {
        File.WriteAllBytes(Folder[file.Name], file.Buffer);
        return Folder[file.Name];
    }

    // Files of the workspace that hold content, with their lengths; the database and what can be computed again aside.
    private static string Held(string folder) => string.Join('\n', Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories)
        .Where(path => path.Contains("/files/", StringComparison.Ordinal) || Path.GetFileName(path).StartsWith("incoming-", StringComparison.Ordinal)).Order(StringComparer.Ordinal));
}
