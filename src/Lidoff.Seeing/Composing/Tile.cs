using Lidoff.Seeing.Vision;
using OpenCvSharp;
using OpenCvSharp.Features2D;

namespace Lidoff.Seeing.Composing;

/// <summary>One tile: its pixels, a sheet to compare on, and its features. The largest of what stitching holds in memory.</summary>
internal sealed class Tile : IDisposable
{
    // Corners and blobs are found on a small sheet and placed to a fraction of a pixel later on a larger one.
    private const double FeaturePixels = 450_000;
    private const int MostFeatures = 1500;

    private Tile(int number, SourcePicture source, Mat colour, Mat grey, double times, KeyPoint[] places, Mat features)
    {
        (Number, Source, Colour, Grey, Times, Places, Features) = (number, source, colour, grey, times, places, features);
    }

    /// <summary>From 0 in the given order.</summary>
    public int Number { get; }

    public SourcePicture Source { get; }

    public Mat Colour { get; }

    /// <summary>Brightness against its surroundings, 8 bits, <see cref="Times"/> px of the tile to one of it.</summary>
    public Mat Grey { get; }

    public double Times { get; }

    /// <summary>Where its features lie, px of <see cref="Grey"/>.</summary>
    public KeyPoint[] Places { get; }

    public Mat Features { get; }

    public int Width => Source.Header.Width;

    public int Height => Source.Header.Height;

    /// <summary>Opens a tile, with a sheet reduced <paramref name="times"/>, which is the same for all tiles.</summary>
    public static Tile Open(int number, SourcePicture source, double times)
    {
        var colour = Sheets.Colour(source);
        var pixels = (double)colour.Width * colour.Height;
        using var plain = Sheets.Grey(colour, pixels / (times * times)).Grey;
        var grey = Evened(plain);
        var less = Math.Max(1, Math.Sqrt((double)grey.Width * grey.Height / FeaturePixels));
        using var small = new Mat();
        Cv2.Resize(grey, small, new(Math.Max(1, (int)(grey.Width / less)), Math.Max(1, (int)(grey.Height / less))), 0, 0, InterpolationFlags.Area);
        using var sift = SIFT.Create(MostFeatures);
        var features = new Mat();
        sift.DetectAndCompute(small, null, out var places, features);
        var (sx, sy) = ((double)grey.Width / small.Width, (double)grey.Height / small.Height);
        // Its places count from the middle of the first pixel, ours from its corner.
        for (var i = 0; i < places.Length; i++) places[i].Pt = new((float)((places[i].Pt.X + 0.5) * sx), (float)((places[i].Pt.Y + 0.5) * sy));
        return new(number, source, colour, grey, times, places, features);
    }

    public void Dispose()
    {
        Colour.Dispose();
        Grey.Dispose();
        Features.Dispose();
    }

    /// <summary>Without the lamp's fall-off, which would look like an edge of its own in both tiles.</summary>
    private static Mat Evened(Mat grey)
    {
        using var wide = new Mat();
        grey.ConvertTo(wide, MatType.CV_32F, 1, 6);
        using var around = new Mat();
        Cv2.BoxFilter(wide, around, MatType.CV_32F, new(61, 61), borderType: BorderTypes.Replicate);
        using var even = new Mat();
        Cv2.Divide(wide, around, even);
        var shown = new Mat();
        even.ConvertTo(shown, MatType.CV_8U, 100);
        return shown;
    }
}
