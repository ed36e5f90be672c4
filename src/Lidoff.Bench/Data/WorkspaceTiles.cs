using System.Collections.Concurrent;
using Lidoff.Evidence.Store;
using Lidoff.Evidence.Working;
using Lidoff.Seeing.Pictures;

namespace Lidoff.Bench.Data;

/// <summary>
/// Thumbnails and tiles of a workspace's pictures, two at a time so that a page of large ones cannot fill the memory. A pyramid is
/// made once, by a job, and kept in the cache folder.
/// </summary>
public sealed class WorkspaceTiles(Workspace workspace, JobDesk desk) : ITileSource, IDisposable
{
    private readonly SemaphoreSlim seats = new(2);
    private readonly ConcurrentDictionary<string, Lazy<Job<TileSource>>> pyramids = new(StringComparer.Ordinal);

    /// <inheritdoc/>
    public Task<PictureBytes?> Thumbnail(string sha256, int side, CancellationToken stop) => Seated(() =>
    {
        if (Header(sha256) is not { } header) return null;
        return Seeing.Pictures.Thumbnail.Jpeg(workspace.Files.PathOf(sha256), sha256[..12], header, side) is { Ok: true } made ? new PictureBytes(made.Value, "image/jpeg") : null;
    }, stop);

    /// <inheritdoc/>
    public async Task<TileLevels?> Levels(string sha256, CancellationToken stop) =>
        await Pyramid(sha256, stop).ConfigureAwait(false) is { } tiles ? new TileLevels(tiles.Width, tiles.Height, TileSource.TileSide, TileSource.Overlap, tiles.TopLevel + 1) : null;

    /// <inheritdoc/>
    public async Task<PictureBytes?> Tile(string sha256, int level, int x, int y, CancellationToken stop)
    {
        if (await Pyramid(sha256, stop).ConfigureAwait(false) is not { } tiles || level < 0 || level > tiles.TopLevel) return null;
        return await Seated(() => tiles.Jpeg(level, x, y) is { Ok: true } tile ? new PictureBytes(tile.Value, "image/jpeg") : null, stop).ConfigureAwait(false);
    }

    /// <summary>What the job is called that makes a picture's tiles.</summary>
    public static string JobName(string sha256) => "tiles of " + sha256[..12];

    /// <inheritdoc/>
    public void Dispose() => seats.Dispose();

    private PictureHeader? Header(string sha256) =>
        workspace.Files.Has(sha256) && PictureFile.Read(workspace.Files.PathOf(sha256), sha256[..12]) is { Ok: true } header ? header.Value : null;

    private async Task<TileSource?> Pyramid(string sha256, CancellationToken stop)
    {
        if (Header(sha256) is not { } header) return null;
        var job = pyramids.GetOrAdd(sha256, _ => new(() => desk.Start<TileSource>(JobName(sha256), report => Task.Run(() =>
            TilePyramid.Make(workspace.Files.PathOf(sha256), sha256[..12], header, sha256, workspace.CacheFolder, report))))).Value;
        var made = await job.Result.WaitAsync(stop).ConfigureAwait(false);
        return made.TryValue(out var tiles) ? tiles : null;
    }

    private async Task<T?> Seated<T>(Func<T?> work, CancellationToken stop)
        where T : class
    {
        await seats.WaitAsync(stop).ConfigureAwait(false);
        try
        {
            return await Task.Run(work, stop).ConfigureAwait(false);
        }
        finally
        {
            seats.Release();
        }
    }
}
