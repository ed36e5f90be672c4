using System.Collections.Concurrent;
using Lidoff.Evidence.Store;
using Lidoff.Evidence.Working;
using Lidoff.Seeing.Pictures;

namespace Lidoff.Bench.Data;

/// <summary>
/// Thumbnails and tiles of a workspace's pictures, decoded as there are seats. A pyramid is made once, by a job, and kept in the cache
/// folder; one that was stopped is begun anew when it is asked for again.
/// </summary>
public sealed class WorkspaceTiles(Workspace workspace, JobDesk desk, PictureSeats seats) : ITileSource
{
    private readonly ConcurrentDictionary<string, Lazy<Job<TileSource>>> pyramids = new(StringComparer.Ordinal);

    /// <inheritdoc/>
    public async Task<PictureBytes?> Thumbnail(string sha256, int side, CancellationToken stop)
    {
        if (Header(sha256) is not { } header) return null;
        PictureBytes? Made() =>
            Seeing.Pictures.Thumbnail.Kept(workspace.Files.PathOf(sha256), sha256[..12], header, side, sha256, workspace.CacheFolder) is { Ok: true } made ? new PictureBytes(made.Value, "image/jpeg") : null;
        // One that is kept waits for nobody.
        var large = PictureSeats.IsLarge(header) && !Seeing.Pictures.Thumbnail.IsKept(sha256, side, workspace.CacheFolder);
        return await seats.Take(large, Made, stop).ConfigureAwait(false);
    }

    /// <inheritdoc/>
    public async Task<TileLevels?> Levels(string sha256, CancellationToken stop) =>
        await Pyramid(sha256, stop).ConfigureAwait(false) is { } tiles ? new TileLevels(tiles.Width, tiles.Height, TileSource.TileSide, TileSource.Overlap, tiles.TopLevel + 1) : null;

    /// <inheritdoc/>
    public async Task<PictureBytes?> Tile(string sha256, int level, int x, int y, CancellationToken stop)
    {
        if (await Pyramid(sha256, stop).ConfigureAwait(false) is not { } tiles || level < 0 || level > tiles.TopLevel) return null;
        return await seats.Take(false, () => tiles.Jpeg(level, x, y) is { Ok: true } tile ? new PictureBytes(tile.Value, "image/jpeg") : null, stop).ConfigureAwait(false);
    }

    /// <summary>What the job is called that makes a picture's tiles.</summary>
    public static string JobName(string sha256) => "tiles of " + sha256[..12];

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

    private Task<Numbers.Failing.Outcome<TileSource>> Make(string sha256, PictureHeader header, IJobReport report) => seats.Take(
        PictureSeats.IsLarge(header),
        () => TilePyramid.Make(workspace.Files.PathOf(sha256), sha256[..12], header, sha256, workspace.CacheFolder, report),
        report.Stop);
}
