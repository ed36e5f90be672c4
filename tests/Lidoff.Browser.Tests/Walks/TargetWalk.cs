using Lidoff.Browser.Tests.Fixtures;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Measuring.Targets;
using Microsoft.Playwright;

namespace Lidoff.Browser.Tests.Walks;

/// <summary>A target in a picture gives its scale by one key and its pitch.</summary>
public sealed class TargetWalk(TheBrowser browser) : BrowserTest(browser)
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task A_key_finds_the_checkerboard_and_its_pitch_is_the_scale(bool narrow)
    {
        var bench = await Bench();
        var window = await Open(bench, narrow ? new Look(390, 844, ColorScheme.Dark) : null);
        await window.Go("/");
        await window.Page.SetInputFilesAsync("form[data-upload] input[type=file]", Files.Checkerboard);
        await window.Arrives("/dossiers/device-1/see/*");
        await Assertions.Expect(window.Page.Locator("#stage canvas")).ToBeVisibleAsync();
        await window.Page.Keyboard.PressAsync("d");
        await Assertions.Expect(window.Page.Locator(".found-scale")).ToContainTextAsync("A checkerboard: 70 corners of 10 × 7, 45 px from one to the next");
        await Assertions.Expect(window.Page.Locator(".stage .line.found")).ToHaveCountAsync(70);
        await Shoot(window, narrow ? "target-found-narrow" : "target-found");
        await BothInSight(window, "#pitch");
        await window.Enter("#pitch", "2 mm, glass");
        await bench.Stored("device-1", "the target", session => session.View.Live<ScaleSighting>().Count == 1);
        var scale = Assert.Single(bench.Stored("device-1", session => session.View).Live<ScaleSighting>()).Value;
        Assert.Equal((TargetPattern.Checker, 2.0, 2 * KnownTarget.GlassU, 70), (scale.Reference.Target!.Pattern, scale.Reference.Target.PitchMm, scale.Reference.Target.PitchUMm, scale.Reference.Target.Found));
        await Assertions.Expect(window.Page.Locator(".tools-row .chip")).ToContainTextAsync("22.5 px/mm");
        await Assertions.Expect(window.Page.Locator("ul.measured")).ToContainTextAsync("checkerboard, pitch 2.0000 ± 0.0012 mm, 70 corners");
        Assert.True(await window.Page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"), "needs sideways scrolling");
        await Shoot(window, narrow ? "target-known-narrow" : "target-known");
    }

    [Theory]
    [InlineData(390, 844, ColorScheme.Light)]
    [InlineData(390, 844, ColorScheme.Dark)]
    [InlineData(1440, 900, ColorScheme.Light)]
    [InlineData(1440, 900, ColorScheme.Dark)]
    public async Task A_ruler_is_seen_drawn_while_it_waits_to_be_taken(int width, int height, ColorScheme scheme)
    {
        var bench = await Bench();
        var window = await Open(bench, new Look(width, height, scheme));
        await window.Go("/");
        await window.Page.SetInputFilesAsync("form[data-upload] input[type=file]", Files.Ruler);
        await window.Arrives("/dossiers/device-1/see/*");
        await Assertions.Expect(window.Page.Locator("#stage canvas")).ToBeVisibleAsync();
        await window.Page.Keyboard.PressAsync("d");
        await Assertions.Expect(window.Page.Locator(".found-scale")).ToContainTextAsync("42 gaps");
        await Shoot(window, $"ruler-found-{width}-{scheme}".ToLowerInvariant());
        await BothInSight(window, ".found-scale .act");
        await window.Page.Keyboard.PressAsync("t");
        await bench.Stored("device-1", "the ruler", session => session.View.Live<ScaleSighting>().Count == 1);
        await Assertions.Expect(window.Page.Locator(".found-scale")).ToHaveCountAsync(0);
    }

    /// <summary>The picture with what was found, and what asks about it, stand in one window, above the strip of rooms where that lies at its foot, neither over the other's lines.</summary>
    private static async Task BothInSight(Window window, string asks)
    {
        // The page scrolls there once it is drawn.
        await Assertions.Expect(window.Page.Locator(asks).First).ToBeInViewportAsync(new() { Ratio = 1 });
        var strip = (await window.Page.Locator("nav.rooms, .rooms").First.BoundingBoxAsync())!;
        var (tall, drawn, line) = (strip.Y > 0 && strip.Width > strip.Height ? strip.Y : window.Page.ViewportSize!.Height, (await window.Page.Locator("#stage").BoundingBoxAsync())!, (await window.Page.Locator(asks).First.BoundingBoxAsync())!);
        // Of a wide window's stage the foot may stand below it; the drawn things may not.
        Assert.InRange(drawn.Y, 0, tall);
        Assert.InRange(line.Y, 0, tall - line.Height);
        var panel = (await window.Page.Locator(".found-scale").BoundingBoxAsync())!;
        foreach (var mark in await window.Page.Locator(".stage .line.found, .stage .line.scale").AllAsync())
        {
            var box = (await mark.BoundingBoxAsync())!;
            Assert.True(box.Y >= drawn.Y && box.Y + box.Height <= tall && (box.Y >= panel.Y + panel.Height || box.Y + box.Height <= panel.Y), $"a mark at {box.Y} to {box.Y + box.Height}, the panel at {panel.Y} to {panel.Y + panel.Height}");
        }
    }

    [Fact]
    public async Task Where_nothing_is_found_it_says_what_would_be()
    {
        var bench = await Bench();
        var window = await Open(bench);
        await window.Go("/");
        await window.Page.SetInputFilesAsync("form[data-upload] input[type=file]", Files.Picture());
        await window.Arrives("/dossiers/device-1/see/*");
        await Assertions.Expect(window.Page.Locator("#stage canvas")).ToBeVisibleAsync();
        await window.Page.Keyboard.PressAsync("d");
        await Assertions.Expect(window.Page.Locator(".found-scale")).ToContainTextAsync("No checkerboard and no square grid of dots was found.");
        await Assertions.Expect(window.Page.Locator(".found-scale")).ToContainTextAsync("No ruler was found either");
    }
}
