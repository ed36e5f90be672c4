using System.Diagnostics;
using System.Globalization;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Pictures;
using Lidoff.Seeing.Rendering;
using NetVips;

namespace Lidoff.Benchmarks;

/// <summary>Measuring one length in a 12-megapixel photograph, its edges and words looked at: at most 3 s, beside decoding the same file once.</summary>
public sealed class MeasureLook : IBenchmark
{
    /// <inheritdoc/>
    public string Name => "measure-look";

    /// <inheritdoc/>
    public IReadOnlyList<Row> Run(BenchPlace place)
    {
        var folder = place.Fresh("measure-look");
        var picture = Path.Combine(folder, "board.jpg");
        var scene = Brindle.MainTop() with { Width = 4032, Height = 3024, PxPerMm = 95, RulerMm = 30 };
        var rendered = SceneRenderer.Render(scene);
        using (var image = Image.NewFromMemory(rendered.Pixels, scene.Width, scene.Height, 3, Enums.BandFormat.Uchar)) image.Jpegsave(picture, q: 92);
        var header = PictureFile.Read(picture, "board.jpg").Value;
        var job = new MeasureJob
        {
            Image = "board.jpg",
            References = [new(rendered.Outline[0], rendered.Outline[1], scene.BoardWidthMm)],
            Targets = [new("edge", new TargetLength("edge", rendered.Outline[3], rendered.Outline[2]))],
        };
        var measured = Timed.Median(5, () => Seconds(() => _ = Measurement.Run(job, header.Frame, PictureLook.At(picture, "board.jpg", header).Value).Value));
        var decoded = Timed.Median(5, () => Seconds(() =>
        {
            using var image = Image.NewFromFile(picture, access: Enums.Access.Sequential);
            _ = image.Avg();
        }));
        return [new Row("one length in 4032 × 3024 px, edges and words looked at", Text($"{measured:0.00} s"), Text($"decode {decoded:0.00} s"), Text($"{measured / decoded:0.0}"), "<= 3 s", measured <= 3)];
    }

    private static double Seconds(Action work)
    {
        var watch = Stopwatch.StartNew();
        work();
        return watch.Elapsed.TotalSeconds;
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
