using ImageMagick;
using NetVips;

namespace Lidoff.Seeing.Pictures;

/// <summary>
/// HEIC as phones write it, which the picture library cannot decode. The one place that touches the second library: its 39 MB are
/// loaded when the first HEIC is met and not before. It is told the format, so that no other decoder of it can be reached, and it turns
/// and mirrors (<c>irot</c>, <c>imir</c>; ISO/IEC 23008-12, 6.5.10 and 6.5.12) as it decodes: what comes out is upright, and the
/// Exif orientation, which repeats the turn, does not count again. What fails throws <see cref="VipsException"/>, like any other format.
/// </summary>
internal static class HeicDecoder
{
    /// <summary>Most pixels of a HEIC, which is decoded in one piece: red, green, blue and the decoder's own planes, some 800 MB in all.</summary>
    public const long MostPixels = 100_000_000;

    // A second fence behind the check of the header; in memory or not at all, never on the disk.
    private const ulong MostBytes = 1UL << 30;

    private static readonly MagickReadSettings Settings = Fenced();

    /// <summary>Size of the upright picture by its header, px.</summary>
    public static (int Width, int Height) Size(string path) => Guarded(() =>
    {
        using var stream = File.OpenRead(path);
        var info = new MagickImageInfo();
        info.Read(stream, Settings);
        return ((int)Math.Min(info.Width, int.MaxValue), (int)Math.Min(info.Height, int.MaxValue));
    });

    /// <summary>The upright picture, red-green-blue, 8 bits.</summary>
    public static Image Open(string path) => Guarded(() =>
    {
        using var stream = File.OpenRead(path);
        using var decoded = new MagickImage(stream, Settings);
        using var pixels = decoded.GetPixelsUnsafe();
        var values = pixels.ToByteArray(PixelMapping.RGB) ?? throw new VipsException("no pixels");
        using var image = Image.NewFromMemory(values, (int)decoded.Width, (int)decoded.Height, 3, Enums.BandFormat.Uchar);
        return image.Copy(interpretation: Enums.Interpretation.Srgb);
    });

    private static T Guarded<T>(Func<T> work)
    {
        try
        {
            return work();
        }
        catch (MagickException failure)
        {
            throw new VipsException(failure.Message);
        }
    }

    private static MagickReadSettings Fenced()
    {
        ResourceLimits.Memory = MostBytes;
        ResourceLimits.Disk = 0;
        ResourceLimits.Width = ResourceLimits.Height = (ulong)PictureLimits.Usual.LongestSide;
        return new() { Format = MagickFormat.Heic };
    }
}
