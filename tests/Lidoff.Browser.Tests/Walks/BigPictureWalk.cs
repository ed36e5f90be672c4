using Lidoff.Browser.Tests.Fixtures;
using Lidoff.Evidence.Entries;
using Microsoft.Playwright;
using NetVips;

namespace Lidoff.Browser.Tests.Walks;

/// <summary>A large picture, stored sideways as phones do: seen at once, sharp where it is gone near to, its tiles stopped and made after all.</summary>
public sealed class BigPictureWalk(TheBrowser browser) : BrowserTest(browser)
{
    // Upright 4500 × 7000 px with one square of pure magenta, 40 px wide, from (3200, 5100) on.
    private const int Side = 40;

    // What the canvas shows: middle and width of the magenta, and how many pixels of the row through it are neither magenta nor ground.
    private const string Look = """
        () => {
          const c = document.querySelector('#stage canvas'), g = c.getContext('2d'), { data } = g.getImageData(0, 0, c.width, c.height);
          const is = (i) => data[i] > 200 && data[i + 1] < 70 && data[i + 2] > 200;
          let [n, sx, sy] = [0, 0, 0];
          for (let i = 0; i < data.length; i += 4) if (is(i)) { n += 1; sx += (i / 4) % c.width; sy += Math.floor(i / 4 / c.width); }
          if (!n) return [0, 0, 0, 0];
          const [x, y] = [sx / n, Math.round(sy / n)];
          let between = 0;
          for (let k = 0; k < c.width; k += 1) { const i = 4 * (y * c.width + k); if (!is(i) && data[i] > 140 && data[i + 1] < 100) between += 1; }
          return [x, y, Math.sqrt(n), between];
        }
        """;

    [Fact]
    public async Task Gone_near_to_it_is_sharp_and_in_its_place_whatever_its_orientation()
    {
        var bench = await Bench("band");
        var (window, sha) = await Add(bench);
        await window.Go("/dossiers/band/see/" + sha);
        await Assertions.Expect(window.Page.Locator(".stage .waits")).ToHaveCountAsync(0);
        // Fitted into the window it is a speck, to the right and low.
        var (x, y, _, _) = await Square(window, "the square as a speck", seen => seen.Wide > 1);
        var box = (await window.Page.Locator("#stage").BoundingBoxAsync())!;
        await window.Page.Mouse.MoveAsync((float)(box.X + x), (float)(box.Y + y));
        for (var i = 0; i < 14; i++) await window.Page.Mouse.WheelAsync(0, -120);
        // At about two pixels of the screen for one of the picture, an edge out of tiles is sharp to a few; out of the small picture it would be smeared over twenty.
        await Square(window, "the square, sharp", seen => seen.Wide > Side && seen.Between <= 8);
        await Shoot(window, "near");
        // What is clicked there has the coordinates of the upright picture: the middle of the square, to a pixel.
        var near = await Square(window, "still there", seen => seen.Wide > Side);
        await window.Page.Mouse.ClickAsync((float)(box.X + near.X + 0.5), (float)(box.Y + near.Y + 0.5));
        var point = await window.Page.EvaluateAsync<double[]>("() => JSON.parse(sessionStorage.getItem(`points:${location.pathname}`))[1][0]");
        Assert.InRange(point[0], 3200 + (Side / 2) - 1.5, 3200 + (Side / 2) + 1.5);
        Assert.InRange(point[1], 5100 + (Side / 2) - 1.5, 5100 + (Side / 2) + 1.5);
        await window.Page.Keyboard.PressAsync("Home");
        await Square(window, "the whole again", seen => seen.Wide is > 1 and < Side / 2);
    }

    [Fact]
    public async Task Making_the_tiles_can_be_stopped_and_asked_for_again()
    {
        var bench = await Bench("band");
        var (window, sha) = await Add(bench);
        await window.Go("/dossiers/band/see/" + sha);
        var stop = window.Page.Locator(".making").GetByRole(AriaRole.Button, new() { Name = "Stop" });
        var again = window.Page.Locator(".making").GetByRole(AriaRole.Button, new() { Name = "Make them" });
        // It may be done before it can be stopped; then there is nothing to ask for, which is as well.
        await Patience.Until("making, or made", async () => await stop.IsVisibleAsync() || Made(bench));
        if (await stop.IsVisibleAsync())
        {
            await stop.ClickAsync(new() { Force = true, Timeout = 5000 }).ContinueWith(_ => { }, TaskScheduler.Default);
            await Patience.Until("stopped, or made", async () => await again.IsVisibleAsync() || Made(bench));
            if (await again.IsVisibleAsync()) await again.ClickAsync();
        }

        await Patience.Until("made", () => Task.FromResult(Made(bench)));
        await Assertions.Expect(window.Page.Locator(".making")).ToHaveCountAsync(0);
        Assert.Empty(Directory.GetFiles(Path.Combine(bench.Folder, "cache", "tiles"), "*.part", SearchOption.AllDirectories));
    }

    private static bool Made(LiveBench bench) => Directory.Exists(Path.Combine(bench.Folder, "cache", "tiles")) && Directory.GetFiles(Path.Combine(bench.Folder, "cache", "tiles"), "*.tif", SearchOption.AllDirectories).Length == 1;

    private async Task<(Window Window, string Sha)> Add(LiveBench bench)
    {
        var path = Folder["big.jpg"];
        using (var grain = Image.Gaussnoise(4500, 7000, sigma: 6, mean: 0, seed: 5))
        using (var ground = (grain.Bandjoin(grain, grain) + new[] { 40.0, 90, 60 }).Cast(Enums.BandFormat.Uchar).Copy(interpretation: Enums.Interpretation.Srgb))
        using (var upright = ground.Mutate(image => image.DrawRect([255, 0, 255], 3200, 5100, Side, Side, fill: true)))
        using (var stored = upright.Rot270())
        using (var tagged = stored.Mutate(image => image.Set(GValue.GIntType, "orientation", 6)))
        {
            tagged.Jpegsave(path, q: 92);
        }

        await LiveBench.Command(bench.Folder, "", "add", "band", path);
        return (await Open(bench), bench.Stored("band", session => session.View.Live<FileAdded>().Single().Value.Sha256));
    }

    private static async Task<(double X, double Y, double Wide, double Between)> Square(Window window, string what, Func<(double X, double Y, double Wide, double Between), bool> asWanted)
    {
        (double X, double Y, double Wide, double Between) seen = default;
        await Patience.Until(what, async () =>
        {
            var found = await window.Page.EvaluateAsync<double[]>(Look);
            seen = (found[0], found[1], found[2], found[3]);
            return asWanted(seen);
        });
        return seen;
    }
}
