using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Pictures;
using Lidoff.Seeing.Reading.Finding;

namespace Lidoff.Seeing.Reading.Engine;

/// <summary>Reads the brightness of a part of a picture file, upright, under the picture library's caps.</summary>
public static class GreyPyramidFile
{
    /// <summary>
    /// Longest side that is held, px: characters of 12 px on the finder's sheet are 48 rows of the reader at this size; more only costs memory.
    /// </summary>
    public const int LongSide = 2400;

    /// <summary>The part of a picture around a region, with as much again around it as its turn needs; a large one shrunk by averaging.</summary>
    /// <param name="path">The file.</param>
    /// <param name="name">Its name as people know it.</param>
    /// <param name="header">Its header.</param>
    /// <param name="region">What is looked at, px of the upright picture.</param>
    /// <param name="longSide">Longest side that is held, px.</param>
    public static Outcome<GreyPyramid> Read(string path, string name, PictureHeader header, PictureRegion region, int longSide = LongSide) =>
        Cut(path, name, header, region, longSide, (bytes, bands, width, height, left, top, step) =>
        {
            var grey = Luma.Of(bytes, bands);
            for (var i = 0; i < grey.Length; i++) grey[i] /= 255;
            return new GreyPyramid(grey, width, height, left, top, step);
        });

    /// <summary>The bytes of such a part, 8 bits a channel, one or three channels, made into something: bytes, channels, width, height, left and upper rim in the picture, px of the picture a pixel.</summary>
    internal static Outcome<T> Cut<T>(string path, string name, PictureHeader header, PictureRegion region, int longSide, Func<byte[], int, int, int, double, double, double, T> make)
    {
        Guard.NotNull(header);
        var corners = region.Corners;
        var (left, top) = (Math.Clamp((int)Math.Floor(corners.Min(c => c.X)) - 2, 0, header.Width - 1), Math.Clamp((int)Math.Floor(corners.Min(c => c.Y)) - 2, 0, header.Height - 1));
        var (right, foot) = (Math.Clamp((int)Math.Ceiling(corners.Max(c => c.X)) + 2, left + 1, header.Width), Math.Clamp((int)Math.Ceiling(corners.Max(c => c.Y)) + 2, top + 1, header.Height));
        return PictureFile.Whole<T>(name, header, () =>
        {
            using var stored = PictureFile.Stored(path, header);
            var (x, y, width, height) = PictureTurn.Stored(header.Orientation, stored.Width, stored.Height, left, top, right - left, foot - top);
            using var cut = stored.Crop(x, y, width, height);
            var shrink = Math.Max(1, (int)Math.Ceiling(Math.Max(width, height) / (double)longSide));
            using var less = shrink == 1 ? cut.Copy() : cut.Shrink(shrink, shrink);
            using var small = PictureFile.SmallUpright(less, header);
            return make(small.WriteToMemory<byte>(), small.Bands, small.Width, small.Height, left, top, shrink);
        });
    }
}
