using Lidoff.Bench.Data;
using Lidoff.Bench.Tests.Looking;
using Lidoff.Seeing.Rendering;

namespace Lidoff.Bench.Tests.Rooms.See;

/// <summary>A rendered board.</summary>
public sealed class PictureWorthsTests : IDisposable
{
    private readonly FakeBench bench = new();
    private readonly PictureSeats seats = new();
    private readonly PictureWorths worths;

    public PictureWorthsTests() => worths = new(seats);

    public void Dispose()
    {
        bench.Dispose();
        seats.Dispose();
    }

    [Fact]
    public async Task A_look_that_failed_is_not_kept()
    {
        var sha256 = await Add();
        var path = bench.Workspace.Files.PathOf(sha256);
        var whole = await File.ReadAllBytesAsync(path, TestContext.Current.CancellationToken);
        // Half of it for a while, as where a disk was away in the middle of reading.
        await File.WriteAllBytesAsync(path, whole[..(whole.Length / 2)], TestContext.Current.CancellationToken);
        Assert.Null(await worths.Of(bench, "d", sha256));
        await File.WriteAllBytesAsync(path, whole, TestContext.Current.CancellationToken);
        var found = await worths.Of(bench, "d", sha256);
        Assert.NotNull(found);
        // One that came to something is kept: the same object, not an equal one.
        Assert.Same(found, await worths.Of(bench, "d", sha256));
    }

    [Fact]
    public async Task A_picture_that_is_not_there_has_no_worth() => Assert.Null(await worths.Of(bench, "d", new string('a', 64)));

    private async Task<string> Add()
    {
        bench.Set("d", "");
        using var png = new MemoryStream();
        var scene = Brindle.MainTop();
        SceneRenderer.Render(scene).WritePng(png);
        png.Position = 0;
        var sha256 = (await bench.Add("d", "board.png", png, "drop", CancellationToken.None)).Value.Sha256;
        return sha256;
    }
}
