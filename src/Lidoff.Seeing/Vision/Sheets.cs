using System.Runtime.InteropServices;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Composing;
using Lidoff.Seeing.Pictures;
using NetVips;
using OpenCvSharp;

namespace Lidoff.Seeing.Vision;

/// <summary>
/// Pictures as the vision library takes them. Files are opened by the picture library under its caps, never by the other one, so a
/// hostile file meets one decoder; what goes out again is pixels alone: no Exif, no place, no serial number.
/// </summary>
internal static class Sheets
{
    /// <summary>Upright, red-green-blue, 8 bits.</summary>
    public static Mat Colour(SourcePicture source)
    {
        try
        {
            using var image = PictureFile.Upright(source.Path, source.Header);
            using var rgb = image.Bands == 1 ? image.Bandjoin(image, image) : image.Copy();
            // Not over an array of ours: a dozen of them would wait for the collector long after their pictures are done.
            var pixels = rgb.WriteToMemory(out _);
            try
            {
                using var seen = Mat.FromPixelData(rgb.Height, rgb.Width, MatType.CV_8UC3, pixels);
                return seen.Clone();
            }
            finally
            {
                NetVips.NetVips.Free(pixels);
            }
        }
        catch (VipsException)
        {
            throw new RefusedException(new Fault(source.Name, "a whole picture", PictureSentences.CutOff(source.Name, source.Header.Kind.Says)));
        }
    }

    /// <summary>Upright brightness, 8 bits, reduced by areas so that at most <paramref name="mostPixels"/> are left; and how many px of the picture one of it is.</summary>
    public static (Mat Grey, double Times) Grey(SourcePicture source, double mostPixels)
    {
        using var colour = Colour(source);
        return Grey(colour, mostPixels);
    }

    /// <inheritdoc cref="Grey(SourcePicture, double)"/>
    public static (Mat Grey, double Times) Grey(Mat colour, double mostPixels)
    {
        var grey = new Mat();
        Cv2.CvtColor(colour, grey, ColorConversionCodes.RGB2GRAY);
        var times = Math.Max(1, Math.Sqrt((double)colour.Width * colour.Height / mostPixels));
        if (times <= 1) return (grey, 1);
        using var whole = grey;
        var small = new Mat();
        // One factor for both axes, kept exactly by the map and not by the rounded size.
        using var map = Warps.Of(new Similarity(1 / times, 0, 0, 0));
        using var smooth = new Mat();
        Cv2.GaussianBlur(whole, smooth, default, 0.45 * times);
        Cv2.WarpAffine(smooth, small, map, new((int)(colour.Width / times), (int)(colour.Height / times)), InterpolationFlags.Linear, BorderTypes.Replicate);
        return (small, times);
    }

    /// <summary>A PNG of 8-bit grey or red-green-blue, or of 16-bit grey.</summary>
    public static byte[] Png(Mat sheet)
    {
        var (bytes, bands) = (sheet.Depth() == MatType.CV_16U ? 2 : 1, sheet.Channels());
        using var whole = sheet.IsContinuous() ? sheet : sheet.Clone();
        var pixels = new byte[(long)whole.Width * whole.Height * bands * bytes];
        Marshal.Copy(whole.Data, pixels, 0, pixels.Length);
        using var image = Image.NewFromMemory(pixels, whole.Width, whole.Height, bands, bytes == 2 ? Enums.BandFormat.Ushort : Enums.BandFormat.Uchar);
        using var told = image.Copy(interpretation: bytes == 2 ? Enums.Interpretation.Grey16 : bands == 1 ? Enums.Interpretation.Bw : Enums.Interpretation.Srgb);
        return told.PngsaveBuffer(compression: 3, keep: Enums.ForeignKeep.None);
    }
}
