using System.IO.Compression;
using System.Text;
using System.Text.Json;
using Lidoff.Browser.Tests.Fixtures;
using Lidoff.Seeing.Kinds;
using Lidoff.Telling.Claims;
using Microsoft.Playwright;

namespace Lidoff.Browser.Tests.Walks;

/// <summary>The room Tell: claims that lean on measurements, one that goes stale and is worded anew, and the report that leaves the house.</summary>
public sealed class TellWalk(TheBrowser browser) : BrowserTest(browser)
{
    [Fact]
    public async Task A_claim_goes_stale_is_worded_anew_and_goes_out_with_its_pictures()
    {
        var bench = await Bench("band");
        await Measure(bench);
        var window = await Open(bench);
        await window.Go("/dossiers/band/tell");
        // As it is typed it is read with its value: 100 px at 20 px to the mm.
        await window.Page.Locator("#claim").PressSequentiallyAsync("The seam of H1 is 1.2 mm wide.");
        await window.Page.PressAsync("#claim", "Enter");
        await Assertions.Expect(window.Page.Locator("#claim")).ToHaveValueAsync("");
        // What is offered is put in where the line is being written, and the keys go on there: a digit after it leads to no room.
        await window.Page.Locator("#claim").PressSequentiallyAsync("U1 is {len");
        await window.Page.Locator(".chips .chip", new() { HasTextString = "length:U1:long side" }).ClickAsync();
        await window.Page.Keyboard.TypeAsync(" long.");
        await Assertions.Expect(window.Page.Locator("#claim")).ToHaveValueAsync("U1 is {length:U1:long side} long.");
        await Assertions.Expect(window.Page.Locator("p.reads")).ToContainTextAsync("U1 is 5.0");
        await window.Page.PressAsync("#claim", "Enter");
        await bench.Stored("band", "two claims", session => session.View.Live<ClaimWritten>().Count == 2);
        var claims = window.Page.Locator("ul.claims > li");
        await Assertions.Expect(claims).ToHaveCountAsync(2);
        await Assertions.Expect(claims.Nth(1)).ToContainTextAsync("U1 is 5.0");
        await Publish(bench, window, 1);
        await Assertions.Expect(claims.Nth(1).Locator(".state")).ToHaveTextAsync("same");

        // A better measurement arrives: 120 px, 6 mm.
        var before = bench.Stored("band", session => session.View.Live<LengthSighting>().Single().Id.Hex);
        await LiveBench.Command(
            bench.Folder,
            """{"kind":"length","picture":"board.jpg","spot":"U1","what":"long side","from":[120,250],"to":[240,250]}""" + "\n" + $$"""{"kind":"supersede","target":"{{before}}","by_line":1}""",
            "note",
            "band",
            "-");
        await Assertions.Expect(claims.First.Locator(".state")).ToHaveTextAsync("stale: outside");
        await Assertions.Expect(claims.First).ToContainTextAsync("U1 is 6.0");
        await Assertions.Expect(claims.First.Locator(".doubt")).ToContainTextAsync("a number left the interval readers were told");
        await Assertions.Expect(claims.First.Locator(".doubt")).ToContainTextAsync("length:U1:long side: 5");
        await Assertions.Expect(window.Page.Locator("main")).ToContainTextAsync("1 claim is stale");
        await Shoot(window, "stale");

        // Worded anew where it stands, and told again.
        await claims.First.Locator("summary").ClickAsync();
        await claims.First.GetByRole(AriaRole.Button, new() { Name = "Sentence of C2" }).ClickAsync();
        var field = claims.First.GetByRole(AriaRole.Textbox);
        await Assertions.Expect(field).ToHaveValueAsync("U1 is {length:U1:long side} long.");
        await field.FillAsync("U1 measures {length:U1:long side} along its long side, not 5 mm.");
        await field.PressAsync("Enter");
        await bench.Stored("band", "the new words", session => session.View.Live<ClaimWritten>().Any(claim => claim.Value.Text.Contains("measures", StringComparison.Ordinal)));
        await Publish(bench, window, 2);
        await Assertions.Expect(claims.Nth(1)).ToContainTextAsync("U1 measures 6.0");
        await Assertions.Expect(claims.Nth(1).Locator(".state")).ToHaveTextAsync("same");
        await Assertions.Expect(window.Page.Locator("main")).Not.ToContainTextAsync("stale");
        await Out(window);
    }

    // A telephone's picture with its scale and one length.
    private async Task Measure(LiveBench bench)
    {
        var picture = Folder["board.jpg"];
        await File.WriteAllBytesAsync(picture, Photo.Bytes);
        await LiveBench.Command(bench.Folder, "", "add", "band", picture);
        await LiveBench.Command(
            bench.Folder,
            """
            {"kind":"scale","picture":"board.jpg","from":[100,200],"to":[500,200],"length_mm":20,"u_mm":0.01}
            {"kind":"length","picture":"board.jpg","spot":"U1","what":"long side","from":[120,250],"to":[220,250]}
            """,
            "note",
            "band",
            "-");
    }

    private static async Task Publish(LiveBench bench, Window window, int times)
    {
        await window.Page.GetByRole(AriaRole.Button, new() { Name = "Publish 2 claims" }).ClickAsync();
        await bench.Stored("band", "what readers were told", session => session.View.Live<ClaimsPublished>().Count == times);
    }

    private static async Task Out(Window window)
    {
        await window.Page.GetByRole(AriaRole.Button, new() { Name = "Report out" }).ClickAsync();
        var take = window.Page.GetByRole(AriaRole.Link, new() { Name = "Take the report" });
        await Assertions.Expect(take).ToBeVisibleAsync();
        var download = await window.Page.RunAndWaitForDownloadAsync(() => take.ClickAsync());
        Assert.Equal("band-report.zip", download.SuggestedFilename);
        await using var zip = await ZipFile.OpenReadAsync(await download.PathAsync());
        var parts = new SortedDictionary<string, byte[]>(StringComparer.Ordinal);
        foreach (var entry in zip.Entries)
        {
            using var bytes = new MemoryStream();
            await using var stream = await entry.OpenAsync();
            await stream.CopyToAsync(bytes);
            parts.Add(entry.FullName, bytes.ToArray());
        }

        var pictures = parts.Keys.Where(name => name.StartsWith("pictures/", StringComparison.Ordinal)).ToList();
        Assert.Equal(["report.html", "report.json", "report.md"], parts.Keys.Except(pictures));
        var picture = Assert.Single(pictures);
        foreach (var (name, bytes) in parts)
        {
            Photo.NothingIn(bytes);
            if (!name.StartsWith("report.", StringComparison.Ordinal)) continue;
            var text = Encoding.UTF8.GetString(bytes);
            Assert.Contains("The seam of H1 is 1.2 mm wide.", text, StringComparison.Ordinal);
            Assert.Contains("along its long side, not 5 mm.", text, StringComparison.Ordinal);
            Assert.Contains("6.0", text, StringComparison.Ordinal);
            Assert.Contains(picture, text, StringComparison.Ordinal);
        }

        using var json = JsonDocument.Parse(parts["report.json"]);
        Assert.Equal(JsonValueKind.Object, json.RootElement.ValueKind);
        Photo.NoTags(parts[picture]);
    }
}
