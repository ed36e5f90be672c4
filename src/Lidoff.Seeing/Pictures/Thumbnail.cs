using Lidoff.Numbers.Failing;
using NetVips;

namespace Lidoff.Seeing.Pictures;

/// <summary>Small upright pictures, made in bounded memory: a JPEG is shrunk while it is decoded, anything else as it streams.</summary>
public static class Thumbnail
{
    /// <summary>A JPEG without any metadata, fitting into <paramref name="longestSide"/> px (never enlarged).</summary>
    public static Outcome<byte[]> Jpeg(string path, string name, PictureHeader header, int longestSide)
    {
        Guard.That(longestSide > 0, "a side above zero");
        var shrink = 1;
        // Decoding at a half, a quarter or an eighth costs next to nothing; two times the wanted size is kept for a clean reduction.
        while (shrink < 8 && header.Kind.MediaType == "image/jpeg" && Math.Max(header.Width, header.Height) / (shrink * 2) >= 2 * longestSide) shrink *= 2;
        try
        {
            using var image = PictureFile.Upright(path, header, shrink);
            using var small = image.ThumbnailImage(longestSide, height: longestSide, size: Enums.Size.Down);
            return small.JpegsaveBuffer(q: 85, keep: Enums.ForeignKeep.None);
        }
        catch (VipsException)
        {
            return new Fault(name, "a whole picture", PictureSentences.CutOff(name, header.Kind.Says));
        }
    }
}
