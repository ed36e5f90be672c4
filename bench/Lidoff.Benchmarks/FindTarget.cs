using System.Diagnostics;
using System.Globalization;
using Lidoff.Seeing.Measuring.Targets;
using Lidoff.Seeing.Pictures;
using NetVips;

namespace Lidoff.Benchmarks;

/// <summary>Finding a checkerboard in a 12-megapixel photograph: at most 3 s, beside decoding the same file once.</summary>
public sealed class FindTarget : IBenchmark
{
    /// <inheritdoc/>
    public string Name => "find-target";

    /// <inheritdoc/>
    public IReadOnlyList<Row> Run(BenchPlace place)
    {
        var folder = place.Fresh("find-target");
        return [Find(folder, "checker.jpg", "checkerboard", (x, y) => (((int)Math.Floor(x) + (int)Math.Floor(y)) & 1) == 0), Find(folder, "dots.jpg", "dot grid", (x, y) => Square(x - Math.Floor(x) - 0.5) + Square(y - Math.Floor(y) - 0.5) < 0.0625)];
    }

    private static Row Find(string folder, string name, string says, Func<double, double, bool> ink)
    {
        var path = Path.Combine(folder, name);
        const int width = 4032, height = 3024;
        var pixels = new byte[width * height];
        // Turned by 17°, 24 by 18 steps of 120 px, the rest a grey table; grain of a few levels by a hash of the place.
        var (sin, cos) = Math.SinCos(0.3);
        for (var i = 0; i < pixels.Length; i++)
        {
            var (px, py) = ((i % width) - (width / 2.0), (i / width) - (height / 2.0));
            var (x, y) = (((px * cos) + (py * sin)) / 120, ((py * cos) - (px * sin)) / 120);
            var on = Math.Abs(x) < 12 && Math.Abs(y) < 9;
            pixels[i] = (byte)((on ? ink(x, y) ? 40 : 210 : 130) + (((i * 2654435761u) >> 28) & 7));
        }

        using (var image = Image.NewFromMemory(pixels, width, height, 1, Enums.BandFormat.Uchar)) image.Gaussblur(1.2).Jpegsave(path, q: 90);
        var header = PictureFile.Read(path, name).Value;
        var places = 0;
        var found = Timed.Median(3, () => Seconds(() => places = TargetSearch.At(path, name, header).Value.Places.Count));
        var decoded = Timed.Median(3, () => Seconds(() =>
        {
            using var image = Image.NewFromFile(path, access: Enums.Access.Sequential);
            _ = image.Avg();
        }));
        return new($"a {says} of {places} places found in 4032 × 3024 px", Text($"{found:0.00} s"), Text($"decode {decoded:0.00} s"), Text($"{found / decoded:0.0}"), "<= 3 s", found <= 3);
    }

    private static double Square(double x) => x * x;

    private static double Seconds(Action work)
    {
        var watch = Stopwatch.StartNew();
        work();
        return watch.Elapsed.TotalSeconds;
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
