using System.Collections.Concurrent;
using Lidoff.Evidence.Store;
using Lidoff.Evidence.Working;
using Lidoff.Seeing.Pictures;

namespace Lidoff.Bench.Data;

/// <summary>
/// Thumbnails and tiles of a workspace's pictures, two at a time and of large pictures one, so that a page of them cannot fill the
/// memory. A pyramid is made once, by a job, and kept in the cache folder; one that was stopped is begun anew when it is asked for again.
/// </summary>
public sealed class WorkspaceTiles(Workspace workspace, JobDesk desk) : ITileSource, IDisposable
{
    // From here on a picture is decoded alone: whoever looks at it sees it sooner, and one decoder's buffers are enough.
    private const long Large = 24_000_000;

    private readonly SemaphoreSlim seats = new(2);
    private readonly SemaphoreSlim alone = new(1);
    private readonly ConcurrentDictionary<string, Lazy<Job<TileSource>>> pyramids = new(StringComparer.Ordinal);

    /// <inheritdoc/>
    public async Task<PictureBytes?> Thumbnail(string sha256, int side, CancellationToken stop)
    {
        if (Header(sha256) is not { } header) return null;
        PictureBytes? Made() =>
            Seeing.Pictures.Thumbnail.Kept(workspace.Files.PathOf(sha256), sha256[..12], header, side, sha256, workspace.CacheFolder) is { Ok: true } made ? new PictureBytes(made.Value, "image/jpeg") : null;
        // One that is kept waits for nobody.
        if (!IsLarge(header) || Seeing.Pictures.Thumbnail.IsKept(sha256, side, workspace.CacheFolder)) return await Seated(seats, Made, stop).ConfigureAwait(false);
        return await Seated(alone, Made, stop).ConfigureAwait(false);
    }

    /// <inheritdoc/>
    public async Task<TileLevels?> Levels(string sha256, CancellationToken stop) =>
        await Pyramid(sha256, stop).ConfigureAwait(false) is { } tiles ? new TileLevels(tiles.Width, tiles.Height, TileSource.TileSide, TileSource.Overlap, tiles.TopLevel + 1) : null;

    /// <inheritdoc/>
    public async Task<PictureBytes?> Tile(string sha256, int level, int x, int y, CancellationToken stop)
    {
        if (await Pyramid(sha256, stop).ConfigureAwait(false) is not { } tiles || level < 0 || level > tiles.TopLevel) return null;
        return await Seated(seats, () => tiles.Jpeg(level, x, y) is { Ok: true } tile ? new PictureBytes(tile.Value, "image/jpeg") : null, stop).ConfigureAwait(false);
    }

    /// <summary>What the job is called that makes a picture's tiles.</summary>
    public static string JobName(string sha256) => "tiles of " + sha256[..12];

    /// <inheritdoc/>
    public void Dispose()
    {
        seats.Dispose();
        alone.Dispose();
    }

    private static bool IsLarge(PictureHeader header) => (long)header.Width * header.Height > Large;

    private PictureHeader? Header(string sha256) =>
        workspace.Files.Has(sha256) && PictureFile.Read(workspace.Files.PathOf(sha256), sha256[..12]) is { Ok: true } header ? header.Value : null;

    private async Task<TileSource?> Pyramid(string sha256, CancellationToken stop)
    {
        // Made before: no header need be read. A file that was erased meanwhile shows nothing any more.
        if (workspace.Files.Has(sha256) && pyramids.TryGetValue(sha256, out var known) && known.Value.Result is { IsCompletedSuccessfully: true, Result.Ok: true } there) return there.Result.Value;
        if (Header(sha256) is not { } header) return null;
        var made = pyramids.GetOrAdd(sha256, _ => new(() => desk.Start<TileSource>(JobName(sha256), report => Make(sha256, header, report))));
        var result = await made.Value.Result.WaitAsync(stop).ConfigureAwait(false);
        if (result.TryValue(out var tiles)) return tiles;
        // Stopped, or the disk was full: next time may be better.
        pyramids.TryRemove(new(sha256, made));
        return null;
    }

    private async Task<Numbers.Failing.Outcome<TileSource>> Make(string sha256, PictureHeader header, IJobReport report)
    {
        Numbers.Failing.Outcome<TileSource> Made() => TilePyramid.Make(workspace.Files.PathOf(sha256), sha256[..12], header, sha256, workspace.CacheFolder, report);
        if (!IsLarge(header)) return await Task.Run(Made).ConfigureAwait(false);
        await alone.WaitAsync(report.Stop).ConfigureAwait(false);
        try
        {
            return await Task.Run(Made).ConfigureAwait(false);
        }
        finally
        {
            alone.Release();
        }
    }

    private static async Task<T?> Seated<T>(SemaphoreSlim seats, Func<T?> work, CancellationToken stop)
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
