namespace Lidoff.Bench.Data;

/// <summary>
/// Pictures made small enough to send: thumbnails and the tiles of a zoomable view. Null when the file is no picture or
/// cannot be opened. Implementations bound their own memory.
/// </summary>
public interface ITileSource
{
    /// <summary>The upright picture with its longer side at most <paramref name="side"/> pixels.</summary>
    Task<PictureBytes?> Thumbnail(string sha256, int side, CancellationToken stop);

    /// <summary>How the picture is cut up.</summary>
    Task<TileLevels?> Levels(string sha256, CancellationToken stop);

    /// <summary>One tile; level 0 is the picture in one pixel, each next one twice as large, x and y count tiles from the top left.</summary>
    Task<PictureBytes?> Tile(string sha256, int level, int x, int y, CancellationToken stop);
}
