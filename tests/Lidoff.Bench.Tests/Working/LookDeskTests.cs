using System.Globalization;
using Lidoff.Bench.Data;
using Lidoff.Bench.Rooms.See.Advising;
using Lidoff.Bench.Tests.Looking;
using Lidoff.Bench.Working;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Rendering;

namespace Lidoff.Bench.Tests.Working;

/// <summary>Pictures are rendered with a pinhole camera that leans or does not; their known length lies along one edge of the board.</summary>
public sealed class LookDeskTests : IDisposable
{
    private readonly FakeBench bench = new();
    private readonly PictureSeats seats = new();
    private readonly LookDesk desk;
    private readonly List<string> log = [];

    public LookDeskTests() => desk = new(bench, new Acts(), seats, () => { }, log.Add);

    public void Dispose()
    {
        desk.Dispose();
        seats.Dispose();
        bench.Dispose();
    }

    [Fact]
    public async Task A_picture_taken_at_a_slant_says_so_by_its_own_edges()
    {
        var sha256 = await Add(18);
        Assert.Null(Said(sha256));
        // Nothing is measured in it, and nobody opened it.
        await Seen();
        Assert.Empty(Looks());
        await Seen(sha256);
        Assert.Equal(sha256, Assert.Single(Looks()).Picture);
        var said = Said(sha256)!;
        Assert.StartsWith("Its straight edges were looked at: the scale changes by about ", said.Says, StringComparison.Ordinal);
        // How much wider the near edge of the board is than the far one, carried on over the long side of the picture.
        var scene = Brindle.MainTop() with { TiltDegrees = 18 };
        var corners = SceneTruth.Of(scene).Outline;
        var (upper, lower) = (corners[0].DistanceTo(corners[1]), corners[3].DistanceTo(corners[2]));
        var apart = (corners[0].DistanceTo(corners[3]) + corners[1].DistanceTo(corners[2])) / 2;
        var change = 100 * Math.Abs(upper - lower) / ((upper + lower) / 2) * Math.Max(scene.Width, scene.Height) / apart;
        Assert.InRange(double.Parse(said.Says.Split("about ")[1].Split(" %")[0], CultureInfo.InvariantCulture), change * 0.85, change * 1.15);
        Assert.Contains(said.Against, say => say.Contains("slant", StringComparison.OrdinalIgnoreCase) || say.Contains("lean", StringComparison.OrdinalIgnoreCase) || say.Contains("tilt", StringComparison.OrdinalIgnoreCase));
        Assert.Empty(log);
    }

    [Fact]
    public async Task A_picture_taken_straight_has_nothing_against_it()
    {
        var sha256 = await Add(0);
        await Seen(sha256);
        Assert.Empty(Said(sha256)!.Against);
    }

    [Fact]
    public async Task Lengths_rest_on_the_look_and_the_far_edge_comes_out_right()
    {
        var (sha256, truth, mm) = await Slanted();
        Set($$"""{"kind":"length","spot":"board","what":"lower edge","picture":"{{sha256}}","from":[{{truth[3].X}},{{truth[3].Y}}],"to":[{{truth[2].X}},{{truth[2].Y}}],"click_px":0.5}""");
        var before = Lower();
        await Seen();
        var after = Lower();
        // The scene's own width; the known length is the opposite edge, which stands nearer or farther by the slant.
        Assert.InRange(mm, after.Low, after.High);
        Assert.InRange(after.Mm, mm * 0.985, mm * 1.015);
        Assert.True(after.UMm < 0.6 * before.UMm, FormattableString.Invariant($"{after.UMm} mm with the look, {before.UMm} mm without"));
        var look = Assert.Single(bench.View("d", open => open.Session.View.Live<LookSighting>())!);
        Assert.Contains(look.Id, after.Scales);
        Assert.DoesNotContain(look.Id, before.Scales);
    }

    [Fact]
    public async Task A_look_taken_back_counts_no_more_and_is_not_repeated()
    {
        var sha256 = await Add(18);
        await Seen(sha256);
        var look = bench.View("d", open => open.Session.View.Live<LookSighting>())![0];
        Set($$"""{"kind":"undo","target":"{{look.Id.Hex}}"}""");
        await Seen(sha256);
        Assert.Empty(Looks());
        Assert.Null(Said(sha256));
    }

    [Fact]
    public async Task Without_a_known_length_there_is_nothing_to_look_for()
    {
        await Seen(await Add(18, scaled: false));
        Assert.Empty(Looks());
    }

    [Fact]
    public async Task A_picture_that_breaks_off_is_left_alone_and_the_next_is_looked_at()
    {
        bench.Set("d", "");
        using var png = new MemoryStream();
        SceneRenderer.Render(Brindle.MainTop()).WritePng(png);
        using var half = new MemoryStream(png.ToArray()[..(int)(png.Length / 2)]);
        var broken = (await bench.Add("d", "a-broken.png", half, "drop", CancellationToken.None)).Value.Sha256;
        Set($$"""{"kind":"scale","picture":"{{broken}}","from":[10,10],"to":[90,10],"length_mm":8}""");
        var whole = await Add(0);
        await Seen(broken);
        await Seen(whole);
        Assert.Equal([whole], Looks().Select(look => look.Picture));
    }

    private void Set(FormattableString line) => bench.Set("d", "", FormattableString.Invariant(line));

    private LookSaid? Said(string sha256) => bench.View("d", open => new Answer(LookSaid.Of(open, sha256)))!.Said;

    private Weighing.Modelling.LengthReading Lower() => Assert.Single(bench.View("d", open => open.Model.Length("board", "lower edge"))!.Readings);

    private IReadOnlyList<LookSighting> Looks() => bench.View("d", open => open.Session.View.Live<LookSighting>().Select(each => each.Value).ToList())!;

    private async Task Seen(string opened = "")
    {
        desk.See("d", opened);
        await desk.Rest();
    }

    private async Task<(string Sha256, IReadOnlyList<Evidence.Pictures.PicturePoint> Outline, double WidthMm)> Slanted()
    {
        var scene = Brindle.MainTop() with { TiltDegrees = 18 };
        return (await Add(18), SceneTruth.Of(scene).Outline, scene.BoardWidthMm);
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
        if (scaled) Set($$"""{"kind":"scale","picture":"{{sha256}}","from":[{{edge[0].X}},{{edge[0].Y}}],"to":[{{edge[1].X}},{{edge[1].Y}}],"length_mm":{{scene.BoardWidthMm}},"u_mm":0.02}""");
        return sha256;
    }

    private sealed record Answer(LookSaid? Said);
}
