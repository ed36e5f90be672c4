using Lidoff.Browser.Tests.Fixtures;
using Lidoff.Seeing.Kinds;
using Microsoft.Playwright;
using static Lidoff.Browser.Tests.Walks.Pointer;

namespace Lidoff.Browser.Tests.Walks;

/// <summary>The first three minutes: a picture, two clicks and a length, pointing at things and saying what they are.</summary>
public sealed class SeeWalk(TheBrowser browser) : BrowserTest(browser)
{
    [Fact]
    public async Task A_dropped_picture_gets_its_scale_and_its_letters()
    {
        var bench = await Bench();
        var window = await Open(bench);
        await Begin(window);
        await Click(window, 0.3, 0.5);
        await Click(window, 0.7, 0.5);
        await window.Enter("#scale", "26 mm ± 0.05");
        await Pointing(window);
        await Click(window, 0.45, 0.4);
        await Say(window, "radio beside the antenna");
        await Click(window, 0.6, 0.6);
        await Say(window, "J flat cable because it goes to the lamp");
        await Assertions.Expect(window.Page.Locator("ul.pointed")).ToContainTextAsync("flat cable");
        // Clicks at 45 and 60 % between ends at 30 and 70 %, whatever the zoom.
        await Holds(bench, (0.45 - 0.3) / 0.4, (0.6 - 0.3) / 0.4);
        await Shoot(window, "labelled");
    }

    [Fact]
    public async Task The_line_to_type_on_is_in_view_wherever_the_last_point_lies()
    {
        var bench = await Bench();
        var window = await Open(bench);
        await Begin(window);
        foreach (var (x, y) in new[] { (0.7, 0.05), (0.7, 0.97), (0.99, 0.5), (0.01, 0.97) })
        {
            await window.Page.Keyboard.PressAsync("s");
            await Click(window, 0.3, 0.5);
            await Click(window, x, y);
            await Assertions.Expect(window.Page.Locator("#scale")).ToBeFocusedAsync();
            await window.Page.WaitForFunctionAsync("() => { const e = document.querySelector('#scale'), r = e.getBoundingClientRect(); return document.elementFromPoint(r.x + r.width / 2, r.y + r.height / 2) === e; }");
            await window.Page.Keyboard.PressAsync("Escape");
        }
    }

    [Fact]
    public async Task The_same_by_keyboard_alone()
    {
        var bench = await Bench();
        var window = await Open(bench);
        await Begin(window);
        var keys = window.Page.Keyboard;
        await keys.PressAsync("g");
        await Assertions.Expect(window.Page.Locator("#stage")).ToBeFocusedAsync();
        await Move(keys, "ArrowLeft", 20);
        await keys.PressAsync("Enter");
        await Move(keys, "ArrowRight", 40);
        await keys.PressAsync("Enter");
        await Assertions.Expect(window.Page.Locator("#scale")).ToBeFocusedAsync();
        await keys.TypeAsync("26 mm ± 0.05");
        await keys.PressAsync("Enter");
        await bench.Stored("device-1", "the scale", session => session.View.Live<ScaleSighting>().Count == 1);
        // The keys go on from the picture.
        await Assertions.Expect(window.Page.Locator("#stage")).ToBeFocusedAsync();
        await Pointing(window);
        foreach (var words in new[] { "radio beside the antenna", "J flat cable because it goes to the lamp" })
        {
            await Move(keys, "ArrowDown", 8);
            await keys.PressAsync("Enter");
            await Assertions.Expect(window.Page.Locator("[id^=spot-]:is(input)")).ToBeFocusedAsync();
            await keys.TypeAsync(words);
            await keys.PressAsync("Enter");
            await Assertions.Expect(window.Page.Locator("#stage")).ToBeFocusedAsync();
        }

        await Holds(bench);
        // Every key of the page can be looked up, and the list closes again.
        await keys.PressAsync("?");
        await Assertions.Expect(window.Page.Locator("dialog#keys")).ToContainTextAsync("Point");
        await keys.PressAsync("Escape");
        await Assertions.Expect(window.Page.Locator("dialog#keys")).ToBeHiddenAsync();
        await keys.PressAsync("Control+z");
        await bench.Stored("device-1", "one spot taken back", session => session.View.Live<SpotSighting>().Count == 1);
    }

    [Fact]
    public async Task The_same_at_390_px_and_through_a_reload_in_mid_entry()
    {
        var bench = await Bench();
        var window = await Open(bench, Look.Narrow);
        await Begin(window);
        await Click(window, 0.2, 0.5);
        await Click(window, 0.8, 0.5);
        await window.Enter("#scale", "26 mm ± 0.05");
        await Pointing(window);
        await Click(window, 0.45, 0.4);
        await window.Page.Locator("[id^=spot-]:is(input)").PressSequentiallyAsync("radio beside the");
        await window.Settled();
        await window.Page.ReloadAsync();
        await window.Settled();
        // The point that was set and the words that were typed are both there again.
        await Assertions.Expect(window.Page.Locator("[id^=spot-]:is(input)")).ToHaveValueAsync("radio beside the");
        await window.Page.Locator("[id^=spot-]:is(input)").PressAsync("End");
        await Say(window, " antenna");
        await Click(window, 0.6, 0.6);
        await Say(window, "J flat cable because it goes to the lamp");
        await Holds(bench, (0.45 - 0.2) / 0.6, (0.6 - 0.2) / 0.6);
        Assert.True(await window.Page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= 390);
    }

    private static async Task Begin(Window window)
    {
        await window.Go("/");
        await window.Page.SetInputFilesAsync("form[data-upload] input[type=file]", Files.Picture());
        await window.Arrives("/dossiers/device-1/see/*");
        await Assertions.Expect(window.Page.Locator("#stage canvas")).ToBeVisibleAsync();
    }

    private static async Task Move(IKeyboard keys, string arrow, int times)
    {
        for (var i = 0; i < times; i++) await keys.PressAsync(arrow);
    }

    // What was typed is stored, and the places keep the order and the shares that the clicks had: the way from window to picture is straight.
    private static async Task Holds(LiveBench bench, params double[] shares)
    {
        await bench.Stored("device-1", "two spots", session => session.View.Live<SpotSighting>().Count == 2);
        var view = bench.Stored("device-1", session => session.View);
        var scale = Assert.Single(view.Live<ScaleSighting>()).Value.Reference;
        Assert.Equal((26.0, 0.05), (scale.LengthMm, scale.UMm));
        Assert.True(scale.From.X < scale.To.X);
        Assert.Equal(scale.From.Y, scale.To.Y, 0.5);
        var spots = view.Live<SpotSighting>().Select(spot => spot.Value).ToList();
        Assert.Contains("radio", spots[0].Role, StringComparison.Ordinal);
        Assert.Equal(("J1", "it goes to the lamp"), (spots[1].Spot, spots[1].Why));
        Assert.All(spots, spot => Assert.True(spot.At is { X: > 0 and < 600, Y: > 0 and < 400 }));
        for (var i = 0; i < shares.Length; i++) Assert.Equal(shares[i], (spots[i].At!.Value.X - scale.From.X) / (scale.To.X - scale.From.X), 0.01);
    }
}
