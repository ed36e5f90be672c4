using Lidoff.Bench.Data;

namespace Lidoff.Bench.Tests.Looking;

/// <summary>Thumbnails and tiles that are what a test gave, per hash.</summary>
public sealed class FakeTiles : ITileSource
{
    public Dictionary<string, PictureBytes> Thumbnails { get; } = new(StringComparer.Ordinal);

    public Task<PictureBytes?> Thumbnail(string sha256, int side, CancellationToken stop) =>
        Task.FromResult(Thumbnails.GetValueOrDefault(sha256));

    public Task<TileLevels?> Levels(string sha256, CancellationToken stop) =>
        Task.FromResult(Thumbnails.ContainsKey(sha256) ? new TileLevels(4000, 3000, 254, 1, 13) : null);

    public Task<PictureBytes?> Tile(string sha256, int level, int x, int y, CancellationToken stop) =>
        Task.FromResult(level < 13 ? Thumbnails.GetValueOrDefault(sha256) : null);
}
