using Lidoff.Bench.Data;
using Lidoff.Bench.Tests.Looking;
using Lidoff.Evidence.Working;

namespace Lidoff.Bench.Tests.Serving;

/// <summary>Tiles of a real workspace: stopped and asked for again, and gone with the file they were made of.</summary>
public sealed class WorkspaceTilesTests : IDisposable
{
    private readonly FakeBench bench = new();

    public void Dispose() => bench.Dispose();

    [Fact]
    public async Task Tiles_that_were_stopped_are_made_when_they_are_asked_for_again()
    {
        var sha = await Picture(3000, 2000);
        using var desk = new JobDesk(TimeProvider.System);
        using var seats = new PictureSeats();
        var tiles = new WorkspaceTiles(bench.Workspace, desk, seats);
        // Stopped at its first word.
        using (desk.Listen(job => job.Cancel())) Assert.Null(await tiles.Levels(sha, CancellationToken.None));
        Assert.Equal(JobState.Stopped, Assert.Single(desk.Jobs).State);
        // 3000 px need 12 doublings from one pixel, and the picture's own level is one more.
        Assert.Equal(new TileLevels(3000, 2000, 256, 1, 13), await tiles.Levels(sha, CancellationToken.None));
        Assert.NotNull(await tiles.Tile(sha, 12, 11, 7, CancellationToken.None));
        Assert.Null(await tiles.Tile(sha, 13, 0, 0, CancellationToken.None));
    }

    [Fact]
    public async Task An_erased_picture_leaves_no_tiles_and_no_thumbnail_behind()
    {
        var sha = await Picture(40, 30);
        using var desk = new JobDesk(TimeProvider.System);
        using var seats = new PictureSeats();
        var tiles = new WorkspaceTiles(bench.Workspace, desk, seats);
        Assert.NotNull(await tiles.Thumbnail(sha, 160, CancellationToken.None));
        Assert.NotNull(await tiles.Levels(sha, CancellationToken.None));
        Assert.Equal(2, Cached(sha).Length);
        var entry = bench.View("d", dossier => dossier.Session.View.Live<Evidence.Entries.FileAdded>().Single().Id.Hex)!;
        Assert.True(bench.Note("d", System.Text.Encoding.UTF8.GetBytes($$"""{"kind":"erase","target":"{{entry}}"}""" + "\n")).Ok);
        Assert.Empty(Cached(sha));
        Assert.Null(await tiles.Thumbnail(sha, 160, CancellationToken.None));
        Assert.Null(await tiles.Tile(sha, 6, 0, 0, CancellationToken.None));
    }

    private string[] Cached(string sha) => Directory.GetFiles(bench.Workspace.CacheFolder, sha + "*", SearchOption.AllDirectories);

    private async Task<string> Picture(int width, int height)
    {
        bench.Set("d", "");
        using var png = new MemoryStream(GreyPng.Of(width, height));
        return (await bench.Add("d", "grey.png", png, "drop", CancellationToken.None)).Value.Sha256;
    }
}
