using Lidoff.Numbers.Failing;
using NetVips;

namespace Lidoff.Seeing.Pictures;

/// <summary>
/// The copy of a picture that leaves the machine: upright pixels and nothing else, so neither place, nor camera serial, nor owner's
/// name, nor embedded thumbnail go along. The stored original stays as it is.
/// </summary>
public static class SharedCopy
{
    // Close to what phones write; marks stay readable at it.
    private const int Quality = 92;

    /// <summary>Writes the copy to <paramref name="output"/>: PNG where the original is lossless and small enough, otherwise JPEG. Gives its media type.</summary>
    public static Outcome<string> Write(string path, string name, PictureHeader header, Stream output)
    {
        return PictureFile.Whole<string>(name, header, () =>
        {
            using var image = PictureFile.Upright(path, header);
            if (Lossless(header))
            {
                image.PngsaveStream(output, keep: Enums.ForeignKeep.None);
                return "image/png";
            }

            image.JpegsaveStream(output, q: Quality, keep: Enums.ForeignKeep.None);
            return "image/jpeg";
        });
    }

    /// <summary>The ending of the copy's name: ".png" or ".jpg".</summary>
    public static string Ending(PictureHeader header) => Lossless(header) ? ".png" : ".jpg";

    private static bool Lossless(PictureHeader header) => header.Kind.MediaType is "image/png" or "image/gif";
}
