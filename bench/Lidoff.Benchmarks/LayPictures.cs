using System.Diagnostics;
using System.Globalization;
using Lidoff.Seeing.Boards.Finding;
using Lidoff.Seeing.Boards.Finding.Matching;
using Lidoff.Seeing.Pictures;
using Lidoff.Seeing.Rendering;
using NetVips;

namespace Lidoff.Benchmarks;

/// <summary>Laying two 12-megapixel pictures of both sides of a board on one another without a click: at most 15 s, beside decoding the same two files once.</summary>
public sealed class LayPictures : IBenchmark
{
    /// <inheritdoc/>
    public string Name => "lay-pictures";

    /// <inheritdoc/>
    public IReadOnlyList<Row> Run(BenchPlace place)
    {
        var folder = place.Fresh("lay-pictures");
        var (top, bottom) = (Written(folder, "top.jpg", Brindle.MainTop()), Written(folder, "bottom.jpg", Brindle.MainBottom()));
        var agree = 0;
        var laid = Timed.Median(3, () => Seconds(() => agree = BoardMatcher.Match(Found(top), Found(bottom), true).TryValue(out var match) && match.Mirrored ? match.Pairs.Count : 0));
        var decoded = Timed.Median(3, () => Seconds(() =>
        {
            foreach (var path in new[] { top, bottom })
            {
                using var image = Image.NewFromFile(path, access: Enums.Access.Sequential);
                _ = image.Avg();
            }
        }));
        return [new Row(Text($"two pictures of 4032 × 3024 px laid on one another ({agree} holes agree)"), Text($"{laid:0.00} s"), Text($"decode both {decoded:0.00} s"), Text($"{laid / decoded:0.0}"), "<= 15 s", laid <= 15 && agree > 0)];
    }

    private static (string Name, PictureMarks Marks) Found(string path) => (Path.GetFileName(path), PictureMarks.Find(path, Path.GetFileName(path), PictureFile.Read(path, path).Value).Value);

    private static string Written(string folder, string name, Scene board)
    {
        var path = Path.Combine(folder, name);
        var scene = board with { Width = 4032, Height = 3024, PxPerMm = 95, RulerMm = 0, TurnDegrees = 2 };
        using var image = Image.NewFromMemory(SceneRenderer.Render(scene).Pixels, scene.Width, scene.Height, 3, Enums.BandFormat.Uchar);
        image.Jpegsave(path, q: 92);
        return path;
    }

    private static double Seconds(Action work)
    {
        var watch = Stopwatch.StartNew();
        work();
        return watch.Elapsed.TotalSeconds;
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
