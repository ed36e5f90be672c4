using Lidoff.Evidence.Pictures;
using NetVips;

namespace Lidoff.Seeing.Pictures;

/// <summary>
/// The eight Exif orientations as turns of pixels (Exif 2.32, tag 0x0112) and of rectangles. Turning needs every row at hand, so a large
/// picture is turned last, when it is small, or tile by tile.
/// </summary>
internal static class PictureTurn
{
    /// <summary>True where the stored picture's right edge becomes the upright one's left or top edge: its columns are counted from there.</summary>
    public static bool ColumnsBackwards(int orientation) => orientation is 2 or 3 or 7 or 8;

    /// <summary>The same of rows, from the bottom edge.</summary>
    public static bool RowsBackwards(int orientation) => orientation is 3 or 4 or 6 or 7;

    /// <summary>The picture upright; the caller owns it and what it was made of.</summary>
    public static Image Upright(Image stored, int orientation)
    {
        if (orientation is 1) return stored.Copy();
        if (orientation is 2) return stored.FlipHor();
        if (orientation is 3) return stored.Rot180();
        if (orientation is 4) return stored.FlipVer();
        if (orientation is 8) return stored.Rot270();
        var turned = stored.Rot90();
        if (orientation is 6) return turned;
        using (turned) return orientation is 5 ? turned.FlipHor() : turned.FlipVer();
    }

    /// <summary>Where a rectangle of the upright picture lies in the stored one of that width and height.</summary>
    public static (int Left, int Top, int Width, int Height) Stored(int orientation, int storedWidth, int storedHeight, int left, int top, int width, int height)
    {
        var (x, y, w, h) = ExifOrientation.SwapsSides(orientation) ? (top, left, height, width) : (left, top, width, height);
        return (ColumnsBackwards(orientation) ? storedWidth - x - w : x, RowsBackwards(orientation) ? storedHeight - y - h : y, w, h);
    }
}
