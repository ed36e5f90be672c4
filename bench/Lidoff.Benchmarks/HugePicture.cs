using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using Lidoff.BrowserSupport;
using Microsoft.Playwright;
using NetVips;

namespace Lidoff.Benchmarks;

/// <summary>
/// A board of 100 megapixels in a browser: from opening its page to the first picture of it at most 2 s, a later tile at most 50 ms, the
/// workbench at most 600 MB, and it moves under the hand. As stored, and as a phone held upright stores it (turned by its Exif tag). Beside the picture library alone.
/// </summary>
public sealed class HugePicture : IBenchmark
{
    private const int Side = 10_000, Tiles = 120;

    // A free run of places, the same each time (the constants are those of Numerical Recipes).
    private uint state = 1;

    /// <inheritdoc/>
    public string Name => "huge-picture";

    /// <inheritdoc/>
    public IReadOnlyList<Row> Run(BenchPlace place)
    {
        var folder = place.Fresh("huge-picture");
        var rows = new List<Row>();
        foreach (var (what, orientation) in new[] { ("as stored", 1), ("turned by its tag", 6) })
        {
            var picture = Path.Combine(folder, string.Create(CultureInfo.InvariantCulture, $"huge{orientation}.jpg"));
            Write(picture, orientation);
            rows.AddRange(Measure(place, folder, picture, what).GetAwaiter().GetResult());
        }

        return rows;
    }

    private static void Write(string path, int orientation)
    {
        // Clouds with grain: a smooth gradient would compress to nothing and flatter us.
        using var clouds = Image.Perlin(Side, Side, cellSize: 400, seed: 1);
        using var grain = Image.Gaussnoise(Side, Side, sigma: 12, mean: 0, seed: 1);
        using var grey = ((clouds * 90) + grain + 128).Cast(Enums.BandFormat.Uchar);
        using var colour = grey.Bandjoin(grey.Rot180(), grey.Flip(Enums.Direction.Horizontal)).Copy(interpretation: Enums.Interpretation.Srgb);
        using var tagged = colour.Mutate(image => image.Set(GValue.GIntType, "orientation", orientation));
        tagged.Jpegsave(path, q: 92);
    }

    private async Task<IReadOnlyList<Row>> Measure(BenchPlace place, string folder, string picture, string what)
    {
        var workspace = Path.Combine(folder, "workspace" + Path.GetFileNameWithoutExtension(picture));
        Timed.Run(place.Program, ["new", "big", "--workspace", workspace]);
        Timed.Run(place.Program, ["add", "big", picture, "--workspace", workspace]);
        var sha = Directory.EnumerateFiles(Path.Combine(workspace, "files"), "*", SearchOption.AllDirectories).Select(path => Path.GetFileName(Path.GetDirectoryName(path)!) + Path.GetFileName(path)).Single();
        // The picture library alone: the same small picture, and a tile cut out of pixels that lie in memory.
        var watch = Stopwatch.StartNew();
        using (var small = Image.Thumbnail(picture, 1280, height: 1280)) small.JpegsaveBuffer(q: 85);
        var alone = watch.Elapsed.TotalSeconds;
        using var part = Image.Jpegload(picture, shrink: 8).CopyMemory();
        var cut = Timed.Median(40, () =>
        {
            watch.Restart();
            using var tile = part.Crop(500, 500, 258, 258);
            tile.JpegsaveBuffer(q: 85);
            return watch.Elapsed.TotalMilliseconds;
        });

        await using var program = await BuiltProgram.Start(place.Program, "bench", "--no-browser", "--workspace", workspace);
        await using var chromium = await Chromium.Start();
        var page = await chromium.Browser.NewPageAsync(new() { ViewportSize = new() { Width = 1440, Height = 900 } });
        // Another page first: the start of the program and of the browser are measured elsewhere.
        await page.GotoAsync(program.Address.ToString());
        await page.WaitForSelectorAsync("[data-live]");
        var without = PeakMb(program.Id);
        watch.Restart();
        await page.GotoAsync($"http://127.0.0.1:{program.Address.Port}/dossiers/big/see/{sha}", new() { WaitUntil = WaitUntilState.Commit });
        await page.WaitForFunctionAsync("() => document.querySelector('.stage canvas') && !document.querySelector('.stage .waits')", null, new() { PollingInterval = 10 });
        var first = watch.Elapsed.TotalSeconds;
        var levels = JsonSerializer.Deserialize<JsonElement>(await (await page.APIRequest.GetAsync($"http://127.0.0.1:{program.Address.Port}/tiles/{sha}", new() { Timeout = 120_000 })).TextAsync());
        var sharp = watch.Elapsed.TotalSeconds;
        var (count, width, height) = (levels.GetProperty("levels").GetInt32(), levels.GetProperty("width").GetInt32(), levels.GetProperty("height").GetInt32());
        var took = new List<double>();
        for (var i = -8; i < Tiles; i++)
        {
            var level = count - 1 - Next(4);
            var (across, down) = (((width >> (count - 1 - level)) + 255) / 256, ((height >> (count - 1 - level)) + 255) / 256);
            var address = string.Create(CultureInfo.InvariantCulture, $"http://127.0.0.1:{program.Address.Port}/tiles/{sha}/{level}/{Next(across)}/{Next(down)}");
            watch.Restart();
            var answer = await page.APIRequest.GetAsync(address);
            if (!answer.Ok) throw new InvalidOperationException(address + " gave " + answer.Status);
            await answer.BodyAsync();
            if (i >= 0) took.Add(watch.Elapsed.TotalMilliseconds);
        }

        var (frame, idle) = await Frames(page, program, sha);
        took.Sort();
        var (tile95, peak) = (took[Tiles * 95 / 100], PeakMb(program.Id));
        var size = new FileInfo(picture).Length / 1e6;
        return
        [
            new(Text($"{Side} × {Side} px, {size:0} MB, {what}: opening its page to the first picture"), Text($"{first:0.00} s, sharp after {sharp:0.0} s"), Text($"the library's thumbnail {alone:0.00} s"), Text($"{first / alone:0.0}"), "<= 2 s", first <= 2),
            new(Text($"a tile of it, {what}"), Text($"{tile95:0.0} ms (95 of 100), longest {took[^1]:0.0} ms"), Text($"cut and written in memory {cut:0.0} ms"), Text($"{tile95 / cut:0.0}"), "<= 50 ms", tile95 <= 50),
            new(Text($"a frame while it is zoomed and dragged, {what}"), Text($"{frame:0} ms (95 of 100)"), Text($"at rest {idle:0} ms"), Text($"{frame / idle:0.0}"), "<= 100 ms", frame <= 100),
            new(Text($"peak memory of the workbench, {what}"), Text($"{peak:0} MB"), Text($"before the picture {without:0} MB"), Text($"{peak / without:0.0}"), "<= 600 MB", peak <= 600),
        ];
    }

    // From one painted frame to the next, ms: zoomed in to the pixel, dragged about, zoomed out again; and with nobody touching it.
    private static async Task<(double Moved, double Idle)> Frames(IPage page, BuiltProgram program, string sha)
    {
        await page.GotoAsync($"http://127.0.0.1:{program.Address.Port}/dossiers/big/see/{sha}");
        await page.WaitForSelectorAsync("[data-live]");
        await page.WaitForFunctionAsync("() => document.querySelector('.stage canvas') && !document.querySelector('.stage .waits')");
        await page.EvaluateAsync("() => { let last = 0; window.frames95 = []; const step = (now) => { if (last) window.frames95.push(now - last); last = now; requestAnimationFrame(step); }; requestAnimationFrame(step); }");
        async Task<double> P95(Func<Task> does)
        {
            await page.EvaluateAsync("() => { window.frames95.length = 0; }");
            await does();
            var frames = await page.EvaluateAsync<double[]>("() => window.frames95.slice()");
            return frames.Order().ElementAt(frames.Length * 95 / 100);
        }

        var idle = await P95(() => Task.Delay(1500));
        var box = (await page.Locator("#stage").BoundingBoxAsync())!;
        var (x, y) = (box.X + (box.Width * 0.6f), box.Y + (box.Height * 0.4f));
        var moved = await P95(async () =>
        {
            await page.Mouse.MoveAsync(x, y);
            for (var i = 0; i < 40; i++) await page.Mouse.WheelAsync(0, -40);
            await page.Mouse.DownAsync();
            for (var i = 1; i <= 40; i++) await page.Mouse.MoveAsync(x - (10 * i), y + (3 * i));
            await page.Mouse.UpAsync();
            for (var i = 0; i < 40; i++) await page.Mouse.WheelAsync(0, 40);
        });
        return (moved, idle);
    }

    private int Next(int below)
    {
        state = (state * 1664525) + 1013904223;
        return (int)((state >> 8) % (uint)below);
    }

    private static double PeakMb(int id) =>
        double.Parse(File.ReadLines(string.Create(CultureInfo.InvariantCulture, $"/proc/{id}/status")).First(line => line.StartsWith("VmHWM:", StringComparison.Ordinal)).Split(' ', StringSplitOptions.RemoveEmptyEntries)[1], CultureInfo.InvariantCulture) / 1024;

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
