using System.Globalization;
using System.Security.Cryptography;
using Lidoff.Evidence.Working;
using Lidoff.Seeing.Composing;
using Lidoff.Seeing.Pictures;
using Lidoff.Seeing.Rendering;
using Lidoff.Seeing.Vision;
using NetVips;

namespace Lidoff.Benchmarks;

/// <summary>Stitching six tiles of 2 megapixels and stacking twelve slices of 2, each beside decoding the same files once, and the memory each takes.</summary>
public sealed class ComposePictures : IBenchmark
{
    private const int Width = 1640;
    private const int Height = 1230;

    /// <inheritdoc/>
    public string Name => "compose";

    /// <inheritdoc/>
    public IReadOnlyList<Row> Run(BenchPlace place)
    {
        var folder = place.Fresh("compose");
        var board = Brindle.MainTop() with { Width = Width, Height = Height, PxPerMm = 95, Title = "", RulerMm = 0, Uneven = 0.2 };
        List<SourcePicture> tiles = [], slices = [];
        foreach (var y in new[] { 6.0, 15.0 })
        {
            foreach (var x in new[] { 6.0, 17.0, 28.0 }) tiles.Add(Written(folder, $"t{tiles.Count}.jpg", board with { LookAt = (x + (y / 50), y - (x / 80)), TurnDegrees = (x / 40) - (y / 30) }));
        }

        for (var k = 0; k < 12; k++) slices.Add(Written(folder, $"s{k}.jpg", board with { LookAt = (17, 10), PxPerMm = 95 * (1 + (0.0008 * k)), BlurPx = 0.7 + (0.7 * Math.Abs(k - 5)) }));
        return [.. Rows("stitch 6 tiles of 2 MP", new(ComposeMethod.Stitch, [.. tiles]), 150), .. Rows("stack 12 slices of 2 MP", new(ComposeMethod.Stack, [.. slices], 0.05), 60)];
    }

    private static IEnumerable<Row> Rows(string what, ComposeOrder order, double most)
    {
        var composer = new Composer(VisionLibrary.OfThisMachine);
        var decode = Timed.Median(5, () => Seconds(() =>
        {
            foreach (var picture in order.Pictures)
            {
                using var image = Image.Jpegload(picture.Path);
                _ = image.WriteToMemory<byte>();
            }
        }));
        GC.Collect();
        var before = Memory("VmRSS:");
        var peak = before;
        using var over = new CancellationTokenSource();
        var watching = Task.Run(async () =>
        {
            while (!over.IsCancellationRequested)
            {
                peak = Math.Max(peak, Memory("VmRSS:"));
                await Task.Delay(4).ConfigureAwait(false);
            }
        });
        var made = Timed.Median(3, () => Seconds(() => _ = composer.Make(order, new Nobody()).Value));
        over.Cancel();
        watching.Wait();
        yield return new Row(what, Text($"{made:0.00} s"), Text($"decode them once {decode:0.000} s"), Text($"{made / decode:0}"), Text($"<= {most:0} times"), made / decode <= most);
        yield return new Row("its memory", Text($"{peak - before:0} MB more"), "", "", "<= 600 MB", peak - before <= 600);
    }

    private static SourcePicture Written(string folder, string name, Scene scene)
    {
        var path = Path.Combine(folder, name);
        using (var image = Image.NewFromMemory(SceneRenderer.Render(scene).Pixels, scene.Width, scene.Height, 3, Enums.BandFormat.Uchar).Copy(interpretation: Enums.Interpretation.Srgb)) image.Jpegsave(path, q: 92);
        return new(path, name, Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(path))), PictureFile.Read(path, name).Value);
    }

    private static double Seconds(Action work)
    {
        var watch = System.Diagnostics.Stopwatch.StartNew();
        work();
        return watch.Elapsed.TotalSeconds;
    }

    private static double Memory(string key) =>
        double.Parse(File.ReadLines("/proc/self/status").First(line => line.StartsWith(key, StringComparison.Ordinal)).Split(' ', StringSplitOptions.RemoveEmptyEntries)[1], CultureInfo.InvariantCulture) / 1024;

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private sealed class Nobody : IJobReport
    {
        public CancellationToken Stop => CancellationToken.None;

        public void Say(long done, long total, string words)
        {
        }
    }
}
