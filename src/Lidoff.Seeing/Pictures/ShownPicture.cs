using Lidoff.Numbers.Failing;
using NetVips;

namespace Lidoff.Seeing.Pictures;

/// <summary>
/// An upright copy of a picture to draw on or send away: JPEG without place, camera serial, name of an owner or any other metadata.
/// Made in bounded memory whatever the size of the original.
/// </summary>
/// <param name="Jpeg">The copy.</param>
/// <param name="Width">Its width, px.</param>
/// <param name="Height">Its height, px.</param>
public sealed record ShownPicture(byte[] Jpeg, int Width, int Height)
{
    /// <summary>Copies a picture, its longest side at most <paramref name="longestSide"/> px; never enlarged.</summary>
    public static Outcome<ShownPicture> Of(string path, string name, PictureHeader header, int longestSide) =>
        Thumbnail.Jpeg(path, name, header, longestSide).Then(jpeg =>
        {
            using var image = Image.JpegloadBuffer(jpeg);
            return new ShownPicture(jpeg, image.Width, image.Height);
        });
}
