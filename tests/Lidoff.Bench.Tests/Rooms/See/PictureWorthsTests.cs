using Lidoff.Bench.Data;
using Lidoff.Bench.Tests.Looking;
using Lidoff.Seeing.Rendering;

namespace Lidoff.Bench.Tests.Rooms.See;

/// <summary>A picture is rendered with a pinhole camera that leans or does not; its only known length lies across it.</summary>
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
    public async Task A_picture_taken_at_a_slant_says_so_by_its_own_edges()
    {
        var sha256 = await Add(18);
        Assert.Contains(await worths.Warnings(bench, "d", sha256), say => say.Contains("slant", StringComparison.OrdinalIgnoreCase) || say.Contains("lean", StringComparison.OrdinalIgnoreCase) || say.Contains("tilt", StringComparison.OrdinalIgnoreCase));
        Assert.NotNull(await worths.Of(bench, "d", sha256));
    }

    [Fact]
    public async Task A_look_that_failed_is_not_kept()
    {
        var sha256 = await Add(18);
        var path = bench.Workspace.Files.PathOf(sha256);
        var whole = await File.ReadAllBytesAsync(path, TestContext.Current.CancellationToken);
        // Half of it for a while, as where a disk was away in the middle of reading.
        await File.WriteAllBytesAsync(path, whole[..(whole.Length / 2)], TestContext.Current.CancellationToken);
        Assert.Null(await worths.Of(bench, "d", sha256));
        Assert.Empty(await worths.Warnings(bench, "d", sha256));
        await File.WriteAllBytesAsync(path, whole, TestContext.Current.CancellationToken);
        var found = await worths.Of(bench, "d", sha256);
        Assert.NotNull(found);
        Assert.NotEmpty(await worths.Warnings(bench, "d", sha256));
        // One that came to something is kept: the same object, not an equal one.
        Assert.Same(found, await worths.Of(bench, "d", sha256));
    }

    [Fact]
    public async Task A_picture_taken_straight_says_nothing() => Assert.Empty(await worths.Warnings(bench, "d", await Add(0)));

    [Fact]
    public async Task Without_a_known_length_there_is_nothing_to_speak_against()
    {
        var sha256 = await Add(18, scaled: false);
        Assert.Empty(await worths.Warnings(bench, "d", sha256));
        Assert.Empty(await worths.Warnings(bench, "d", new string('a', 64)));
    }

    private async Task<string> Add(double tilt, bool scaled = true)
    {
        bench.Set("d", "");
        using var png = new MemoryStream();
        var scene = Brindle.MainTop() with { TiltDegrees = tilt };
        SceneRenderer.Render(scene).WritePng(png);
        png.Position = 0;
        var sha256 = (await bench.Add("d", "board.png", png, "drop", CancellationToken.None)).Value.Sha256;
        // The board's upper edge, measured with a good rule.
        var edge = SceneTruth.Of(scene).Outline;
        if (scaled) bench.Set("d", "", FormattableString.Invariant($$"""{"kind":"scale","picture":"{{sha256}}","from":[{{edge[0].X}},{{edge[0].Y}}],"to":[{{edge[1].X}},{{edge[1].Y}}],"length_mm":{{scene.BoardWidthMm}},"u_mm":0.02}"""));
        return sha256;
    }
}
