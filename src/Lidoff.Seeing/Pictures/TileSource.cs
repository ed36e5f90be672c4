using Lidoff.Numbers.Failing;
using NetVips;

namespace Lidoff.Seeing.Pictures;

/// <summary>
/// Deep-zoom tiles of one picture out of one pyramid file (<see cref="TilePyramid"/>). Levels are counted as deep-zoom viewers do:
/// level 0 is one pixel, each level doubles, the top one is the whole picture. A tile is 256 px with one px of overlap on inner edges.
/// </summary>
public sealed class TileSource
{
    /// <summary>Side of a tile without its overlap, px.</summary>
    public const int TileSide = 256;

    /// <summary>Overlap with the neighbours, px on each inner edge.</summary>
    public const int Overlap = 1;

    private readonly string path;
    private readonly int pages;
    private readonly int orientation;

    private TileSource(string path, PictureHeader header, int pages)
    {
        this.path = path;
        this.pages = pages;
        orientation = header.Orientation;
        (Width, Height) = (header.Width, header.Height);
        TopLevel = 0;
        while (1L << TopLevel < Math.Max(Width, Height)) TopLevel++;
    }

    /// <summary>Width of the upright picture, px.</summary>
    public int Width { get; }

    /// <summary>Height of the upright picture, px.</summary>
    public int Height { get; }

    /// <summary>The level that shows the whole picture pixel by pixel.</summary>
    public int TopLevel { get; }

    /// <summary>Opens a pyramid that <see cref="TilePyramid"/> made.</summary>
    public static Outcome<TileSource> Open(string path, PictureHeader header)
    {
        try
        {
            Vips.Start();
            using var image = Image.Tiffload(path);
            return new TileSource(path, header, Math.Max(1, Vips.Whole(image, "n-pages") ?? 1));
        }
        catch (VipsException failure)
        {
            return new Fault("tiles", "a pyramid of this program", PictureSentences.NotWritten(failure.Message.Split('\n')[0]));
        }
    }

    /// <summary>Size of a level, px.</summary>
    public (int Width, int Height) Size(int level)
    {
        Guard.That(level >= 0 && level <= TopLevel, "a level of this picture");
        var shift = TopLevel - level;
        return ((int)Math.Max(1, (Width + (1L << shift) - 1) >> shift), (int)Math.Max(1, (Height + (1L << shift) - 1) >> shift));
    }

    /// <summary>One tile as JPEG.</summary>
    public Outcome<byte[]> Jpeg(int level, int column, int row)
    {
        if (level < 0 || level > TopLevel || column < 0 || row < 0) return NoTile(level, column, row);
        var (width, height) = Size(level);
        if ((long)column * TileSide >= width || (long)row * TileSide >= height) return NoTile(level, column, row);
        var left = Math.Max(0, (column * TileSide) - Overlap);
        var top = Math.Max(0, (row * TileSide) - Overlap);
        var right = Math.Min(width, ((column + 1) * TileSide) + Overlap);
        var bottom = Math.Min(height, ((row + 1) * TileSide) + Overlap);
        try
        {
            using var tile = Part(level, left, top, right - left, bottom - top);
            return tile.JpegsaveBuffer(q: 85, keep: Enums.ForeignKeep.None);
        }
        catch (VipsException)
        {
            return NoTile(level, column, row);
        }
    }

    // A rectangle of a level, cut out as it is stored and then turned.
    private Image Part(int level, int left, int top, int width, int height)
    {
        var page = TopLevel - level;
        if (page >= pages)
        {
            // Smaller than the pyramid's smallest page: that page is small, so all of it is reduced on the spot.
            var (across, down) = Size(TopLevel - pages + 1);
            var (smallWidth, smallHeight) = Size(level);
            using var smallest = Part(TopLevel - pages + 1, 0, 0, across, down);
            using var reduced = smallest.ThumbnailImage(smallWidth, height: smallHeight, size: Enums.Size.Force);
            return reduced.Crop(left, top, width, height);
        }

        using var image = Image.Tiffload(path, page: page);
        var (x, y, w, h) = PictureTurn.Stored(orientation, image.Width, image.Height, left, top, width, height);
        using var cut = image.Crop(x, y, w, h);
        using var held = cut.CopyMemory();
        return PictureTurn.Upright(held, orientation);
    }

    private static Fault NoTile(int level, int column, int row) => new("tile", "a tile of this picture", PictureSentences.NoTile(level, column, row));
}
