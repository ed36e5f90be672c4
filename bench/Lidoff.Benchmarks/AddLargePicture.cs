using System.Globalization;
using Lidoff.Seeing.Pictures;
using NetVips;

namespace Lidoff.Benchmarks;

/// <summary>Adding a 48-megapixel JPEG, at most 2 s and 600 MB, beside hashing and copying the same bytes with the system's own tools.</summary>
public sealed class AddLargePicture : IBenchmark
{
    /// <inheritdoc/>
    public string Name => "add-large";

    /// <inheritdoc/>
    public IReadOnlyList<Row> Run(BenchPlace place)
    {
        var folder = place.Fresh("add-large");
        var picture = Path.Combine(folder, "large.jpg");
        // Clouds with grain: a smooth gradient would compress to nothing and flatter us.
        using (var clouds = Image.Perlin(8000, 6000, cellSize: 400, seed: 1))
        using (var grain = Image.Gaussnoise(8000, 6000, sigma: 12, mean: 0, seed: 1))
        using (var grey = ((clouds * 90) + grain + 128).Cast(Enums.BandFormat.Uchar))
        using (var colour = grey.Bandjoin(grey.Rot180(), grey.Flip(Enums.Direction.Horizontal)).Copy(interpretation: Enums.Interpretation.Srgb))
        {
            colour.Jpegsave(picture, q: 92);
        }

        var workspace = Path.Combine(folder, "workspace");
        Timed.Run(place.Program, ["new", "big", "--workspace", workspace]);
        var header = PictureFile.Read(picture, "large.jpg").Value;
        var seconds = new List<double>();
        var copies = new List<double>();
        var peak = 0.0;
        for (var i = 0; i < 5; i++)
        {
            var (took, mb) = Timed.Run(place.Program, ["add", "big", picture, "--workspace", workspace]);
            seconds.Add(took);
            peak = Math.Max(peak, mb);
            copies.Add(Timed.Run("/bin/sh", ["-c", $"cp '{picture}' '{folder}/copy' && sha256sum '{folder}/copy' && sync '{folder}/copy'"]).Seconds);
        }

        var (add, copy) = (Middle(seconds), Middle(copies));
        var size = new FileInfo(picture).Length / 1e6;
        return
        [
            new Row(Text($"add {header.Width} × {header.Height} px, {size:0} MB"), Text($"{add:0.00} s"), Text($"copy, hash, sync {copy:0.00} s"), Text($"{add / copy:0.0}"), "<= 2 s", add <= 2),
            new Row("its peak memory", Text($"{peak:0} MB"), "", "", "<= 600 MB", peak <= 600),
        ];
    }

    private static double Middle(List<double> values) => values.Order().ElementAt(values.Count / 2);

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
