using System.Security.Cryptography;
using Lidoff.Browser.Tests.Fixtures;
using Lidoff.Evidence.Entries;
using Lidoff.Reckoning.Bound;
using Microsoft.Playwright;

namespace Lidoff.Browser.Tests.Walks;

/// <summary>The room Reckon: an input bound to what was measured in a picture, tried, accepted, and followed back down to the picture's bytes.</summary>
public sealed class ReckonWalk(TheBrowser browser) : BrowserTest(browser)
{
    [Fact]
    public async Task A_pitch_is_bound_to_a_measured_span_and_followed_down_to_the_raw_picture()
    {
        var bench = await Bench("band");
        var picture = Folder["ruled.png"];
        await File.WriteAllBytesAsync(picture, Files.Ruled);
        await LiveBench.Command(bench.Folder, "", "add", "band", picture);
        // 20 px to the mm; 76.2 px are 3.81 mm, the span of four leads of an SOIC-8, whose pitch is 1.27 mm (outline MS-012).
        await LiveBench.Command(
            bench.Folder,
            """
            {"kind":"scale","picture":"ruled.png","from":[100,200],"to":[500,200],"length_mm":20,"u_mm":0.01}
            {"kind":"length","picture":"ruled.png","spot":"U1","what":"lead span","from":[120,250],"to":[196.2,250]}
            """,
            "note",
            "band",
            "-");
        var window = await Open(bench);
        await window.Go("/dossiers/band/reckon");
        await window.Page.Locator("#calculation").PressSequentiallyAsync("pitch span");
        await window.Page.GetByRole(AriaRole.Button, new() { Name = "pitch from span" }).ClickAsync();
        await window.Page.Locator("#bind-says").PressSequentiallyAsync("What is its pitch?");
        // Something that is not there first: said beside the field, nothing stored.
        await window.Page.Locator("#in-span").PressSequentiallyAsync("length:U1:lead spam");
        await window.Page.Locator("#in-pins").PressSequentiallyAsync("4");
        await Assertions.Expect(window.Page.Locator(".field", new() { Has = window.Page.Locator("#in-span") }).Locator(".fault")).ToContainTextAsync("Nobody has measured 'lead spam' of U1 yet");
        await window.Page.PressAsync("#in-pins", "Enter");
        await window.Settled();
        Assert.Empty(bench.Stored("band", session => session.View.Live<ReckonBinding>().ToList()));
        await Assertions.Expect(window.Page.Locator("#in-span")).ToHaveValueAsync("length:U1:lead spam");

        await window.Page.FillAsync("#in-span", "");
        await window.Page.Locator("#in-span").PressSequentiallyAsync("length:U1:lead span");
        var preview = window.Page.Locator("output.preview");
        await Assertions.Expect(preview).ToContainTextAsync("It would be 1.27");
        Assert.Empty(bench.Stored("band", session => session.View.Live<ReckonBinding>().ToList()));
        await Shoot(window, "preview");
        await window.Page.GetByRole(AriaRole.Button, new() { Name = "Store as R1" }).ClickAsync();
        await bench.Stored("band", "the number", session => session.View.Live<ReckonBinding>().Count == 1);
        var headline = window.Page.Locator("ul.numbers li", new() { HasText = "What is its pitch?" });
        await Assertions.Expect(headline.Locator(".headline")).ToContainTextAsync("1.27");
        await Assertions.Expect(window.Page.Locator("#calculation")).ToHaveValueAsync("");

        await Down(bench, window, headline);
    }

    // One click to the number, one to what an input rests on, one to the raw file.
    private async Task Down(LiveBench bench, Window window, ILocator headline)
    {
        await headline.GetByRole(AriaRole.Link).ClickAsync();
        await window.Arrives("/dossiers/band/reckon/R1");
        await Assertions.Expect(window.Page.Locator(".improve")).ToContainTextAsync("span makes 100 % of the doubt: measure that once more");
        var span = window.Page.Locator("ul.tree > li", new() { HasText = "length:U1:lead span" });
        await Assertions.Expect(span).ToContainTextAsync("3.81");
        await span.Locator("summary").ClickAsync();
        await Assertions.Expect(span.Locator("details li", new() { HasText = "\"what\":\"lead span\"" })).ToBeVisibleAsync();
        var file = bench.Stored("band", session => session.View.Live<FileAdded>().Single().Value);
        var hash = Convert.ToHexStringLower(SHA256.HashData(Files.Ruled));
        Assert.Equal(hash, file.Sha256);
        await Assertions.Expect(span.Locator("details .hash", new() { HasText = hash })).ToBeVisibleAsync();
        await Shoot(window, "tree");
        var raw = span.GetByRole(AriaRole.Link, new() { Name = "ruled.png" });
        await Assertions.Expect(raw).ToBeVisibleAsync();
        // Chromium shows a bare picture in a page of its own making, whose style and script a stored file's policy does not let run.
        window.Watch.Forgive("Applying inline style");
        window.Watch.Forgive("Blocked script execution");
        var answer = await window.Page.RunAndWaitForResponseAsync(() => raw.ClickAsync(), each => each.Url.EndsWith("/files/" + hash, StringComparison.Ordinal));
        Assert.Equal(Files.Ruled, await answer.BodyAsync());
    }
}
