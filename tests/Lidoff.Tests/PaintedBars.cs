using Lidoff.Seeing.Reading.Lattices;
using Lidoff.TestSupport;

namespace Lidoff.Tests;

/// <summary>Bright bars that networks of a few nodes take for an A each: what read makes of them can be worked out by hand.</summary>
internal static class PaintedBars
{
    /// <summary>The networks and their cards, into a program's folder of models.</summary>
    public static void Networks(string models)
    {
        TinyOnnx.Write(models, "finder", TinyOnnx.Finder());
        TinyOnnx.Write(models, "bodies", TinyOnnx.Finder());
        // In spreads from the mean bars stand at 0.2 to 0.3 and ground at -1.5, worked out from their areas within a tight strip; what is filled up
        // behind the line stands at 0. Between the last and the first lies the border of these two levels.
        TinyOnnx.Write(models, "reader", TinyOnnx.Reader(ReadingAlphabet.OfMarks.Classes, new Dictionary<int, float> { [0] = -0.42f, [11] = 0.6f }), ReadingAlphabet.OfMarks.Symbols);
    }

    /// <summary>A grey picture with bars of 60 × 40 px and 12 px between them.</summary>
    public static void Paint(string path, int width, int height, int left, int top, int bars)
    {
        var pixels = new byte[width * height];
        for (var i = 0; i < pixels.Length; i++)
        {
            var (x, y) = ((i % width) - left, (i / width) - top);
            pixels[i] = (byte)(x >= 0 && x < 72 * bars && x % 72 < 60 && y is >= 0 and < 40 ? 230 : 30);
        }

        using var image = NetVips.Image.NewFromMemory(pixels, width, height, 1, NetVips.Enums.BandFormat.Uchar);
        File.WriteAllBytes(path, image.PngsaveBuffer());
    }
}
