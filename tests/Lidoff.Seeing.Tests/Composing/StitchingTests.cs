using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Composing;
using Lidoff.Seeing.Rendering;

namespace Lidoff.Seeing.Tests.Composing;

public sealed class StitchingTests(SixTiles six) : IClassFixture<SixTiles>
{
    private static readonly ScenePart[] None = [];

    [Fact]
    public void Six_tiles_with_every_fault_of_a_bench_come_together_within_a_pixel_everywhere()
    {
        var made = six.Made;
        using var picture = Bench.Opened(made.Picture);
        var (near, worst, share, places) = TileBench.Error(picture, SixTiles.First, made.FirstAt!.Value);
        // Measured: 0.40 px and 0.44 px; a pixel is 23 µm here. The same tiles give the same bytes, so a tenth of a pixel is left for another version of
        // the vision library and no more.
        Assert.True(near < 0.5 && worst < 0.54, $"95 of 100 within {near} px, worst {worst} px of {places}");
        Assert.True(share > 0.9 && places > 20, $"{share} of {places} found");
        // What it says is left between tiles is no better than what is (measured: 0.35). Its shortest loop goes over four overlaps, and four that are off
        // by that miss by at most about twice it (errors add as squares); by chance they may close as well as they like (measured: 0.60 while rendered
        // bodies stood out over their outline, 0.15 since).
        Assert.InRange(made.RestPx!.Value, near / 2, 0.46);
        Assert.InRange(made.LoopPx!.Value, 0.001, 2 * made.RestPx.Value);
        Assert.Matches("^6 tiles by [0-9]+ overlaps: 0\\.[0-9]+ px left between them \\(root mean square\\); the worst closed loop misses itself by [0-9.]+ px\\.$", made.Says[0]);
    }

    [Fact]
    public async Task The_same_tiles_give_the_same_bytes_whatever_else_runs_beside()
    {
        using var stop = new CancellationTokenSource();
        // Another thread keeps the vision library busy with other pictures meanwhile.
        var beside = Task.Run(() =>
        {
            using var other = Laid(Row(None), 60, (18, 13), (28, 13));
            while (!stop.IsCancellationRequested) other.Make(ComposeMethod.Stitch);
        }, CancellationToken.None);
        var again = six.Bench.Make(ComposeMethod.Stitch).Value;
        await stop.CancelAsync();
        await beside;
        Assert.Equal(six.Made.Picture, again.Picture);
        Assert.Equal(six.Made.Says, again.Says);
    }

    [Fact]
    public void Grain_on_a_dark_board_keeps_no_tiles_apart()
    {
        // Less than half of the light and twice the noise, as of a camera at a high ISO, on a board with much bare mask: that is grain alone, which is unlike itself from tile to tile.
        using var bench = new Bench();
        var sparse = TileBench.Board with { Parts = [.. TileBench.Board.Parts.Where((_, i) => i % 3 == 0)] };
        foreach (var (x, seed) in new[] { (20.0, 21), (30.0, 22) }) TileBench.Add(bench, TileBench.Tile(sparse, x, 14, seed), seed, 0.4, grain: 4);
        var made = bench.Make(ComposeMethod.Stitch);
        Assert.True(made.Ok, made.Ok ? "" : made.Faults[0].Say);
        Assert.InRange(made.Value.RestPx!.Value, 0, 0.6);
    }

    [Fact]
    public void Six_tiles_share_one_light()
    {
        using var picture = Bench.Opened(six.Made.Picture);
        // Exposures from 0.85 to 1.15, corners a third darker, a lamp to one side: in the tiles it goes from 0.5 to 1.3 of the true light, 5 to
        // 95 of 100 places from 0.62 to 1.2. Measured: 0.83 to 1.10, a ratio of 1.33 for 1.94, half of the spread; what is left is slope that no overlap tells.
        var (low, high) = TileBench.Light(picture, SixTiles.First, six.Made.FirstAt!.Value);
        Assert.True(high / low < 1.36, $"{low} to {high}");
    }

    [Fact]
    public void A_row_of_equal_parts_alone_is_refused_by_the_pair_and_what_would_settle_it()
    {
        using var bench = Laid(Row(None), 60, (18, 13), (28, 13));
        Assert.Matches(
            "^“p01.jpg” and “p02.jpg” fit one another at two places 5[567] px apart: what they share is a row of equal parts, and nothing in it tells one period from the next\\. A tile that shows both and the row's end, or another row of tiles that closes a loop, would settle it\\.$",
            Assert.Single(bench.Make(ComposeMethod.Stitch).Faults).Say);
    }

    [Fact]
    public void Three_vias_beside_the_row_tell_its_periods_apart()
    {
        ScenePart[] vias = [new("V1", PartShape.Hole, 22, 17.5, 0.6, 0.6, 0), new("V2", PartShape.Hole, 24.3, 18, 0.6, 0.6, 0), new("V3", PartShape.Hole, 23.1, 8.6, 0.6, 0.6, 0)];
        using var bench = Laid(Row(vias), 60, (18, 13), (28, 13));
        AtItsPlace(bench, Row(vias), 60, (18, 13));
    }

    [Fact]
    public void A_loop_over_other_tiles_settles_what_a_row_leaves_open()
    {
        ScenePart[] chips =
        [
            new("U1", PartShape.Chip, 13, 17.6, 2.6, 1.8, 0.2) { Marks = ["A7K"] }, new("U2", PartShape.Chip, 16.8, 17.4, 2.4, 1.6, 0.2) { Marks = ["N5"] },
            new("U3", PartShape.Chip, 29.6, 17.5, 2.6, 1.8, 0.2) { Marks = ["Q82"] }, new("U4", PartShape.Chip, 33.4, 17.7, 2.2, 1.6, 0.2) { Marks = ["31"] },
            new("U5", PartShape.Chip, 22, 23, 3, 2, 0.2) { Marks = ["25Q"] }, new("U6", PartShape.Chip, 24.9, 22.4, 1.4, 1.8, 0.2) { Marks = ["8"] },
        ];
        using var bench = Laid(Row(chips), 60, (18, 13), (28, 13), (18, 19.5), (28, 19.5));
        AtItsPlace(bench, Row(chips), 60, (18, 13));
    }

    [Fact]
    public void Tiles_that_share_nothing_are_named()
    {
        using var bench = Laid(TileBench.Board, 60, (7, 6), (18, 6), (28, 7));
        var other = Row(None);
        TileBench.Add(bench, TileBench.Tile(other, 18, 13, 90), 90);
        Assert.Equal(
            "“p04.jpg” overlaps no other tile, or shares nothing with corners in it. Neighbouring tiles should share a quarter of their width: add a tile that lies between, or take out what is of another board or zoom.",
            Assert.Single(bench.Make(ComposeMethod.Stitch).Faults).Say);
    }

    [Fact]
    public void A_pair_one_period_off_is_set_right_by_its_loops_and_one_that_nothing_sets_right_is_refused()
    {
        List<Tile> tiles = [.. six.Bench.Pictures.Select((each, i) => Tile.Open(i, each, 1))];
        List<TilePair> pairs = [];
        for (var i = 0; i < 6; i++) for (var j = i + 1; j < 6; j++) if (PairFinder.Of(tiles[i], tiles[j]) is { } pair) pairs.Add(pair with { Others = [] });
        var at = pairs.FindIndex(pair => (pair.First, pair.Second) == (0, 1));
        var right = pairs[at];
        // 1.27 mm at 44 px/mm: a pin header's period.
        var off = right.Map with { X = right.Map.X + 55.9 };
        pairs[at] = right with { Map = off, Others = [right.Map] };
        var (settled, says) = new TileGraph(tiles, pairs).Settle();
        Assert.Equal("“p01.jpg” and “p02.jpg” first fitted one period of a row off; the loop they close set it right.", Assert.Single(says));
        var mended = settled.Single(pair => (pair.First, pair.Second) == (0, 1));
        Assert.InRange(mended.Map.X, right.Map.X - 1, right.Map.X + 1);

        // One loop of four tiles alone, and no other place known: any of its four pairs may be the wrong one.
        List<TilePair> square = [.. pairs.Where(pair => (pair.First, pair.Second) is (0, 1) or (0, 3) or (1, 4) or (3, 4) or (1, 2) or (2, 5)).Select(pair => pair with { Others = [] })];
        var refused = Assert.Throws<RefusedException>(() => new TileGraph(tiles, square).Settle());
        Assert.Matches("^The loop of tiles over “p0[1-5].jpg” and “p0[1-5].jpg” misses itself by 5[0-9] px, and no single pair is to blame for it\\.", refused.Fault.Say);
        tiles.ForEach(tile => tile.Dispose());
    }

    private static Bench Laid(Scene board, int seed, params (double X, double Y)[] at)
    {
        var bench = new Bench();
        for (var i = 0; i < at.Length; i++) TileBench.Add(bench, TileBench.Tile(board, at[i].X, at[i].Y, seed + i), seed + i);
        return bench;
    }

    private static void AtItsPlace(Bench bench, Scene board, int seed, (double X, double Y) first)
    {
        var made = bench.Make(ComposeMethod.Stitch).Value;
        using var picture = Bench.Opened(made.Picture);
        var (near, _, share, _) = TileBench.Error(picture, TileBench.Tile(board, first.X, first.Y, seed), made.FirstAt!.Value);
        // A period is 56 px: a row one period off would be found nowhere. Measured: 0.9 px by three vias, 1.3 px over a loop of four tiles, whose rows
        // of pads stand up a little and move with the camera.
        Assert.True(near < 1.5 && share > 0.9, $"95 of 100 within {near} px, {share} found");
    }

    /// <summary>Two rows of 40 equal pads at 1.27 mm on a bare white carrier; what stands beside them is given.</summary>
    private static Scene Row(IEnumerable<ScenePart> beside) => TileBench.Board with
    {
        BoardWidthMm = 60, BoardHeightMm = 30,
        Parts =
        [
            new("S1", PartShape.Box, 30, 15, 58, 26, 0) { Tint = PartTint.White },
            .. Enumerable.Range(0, 40).Select(i => new ScenePart($"P{i}", PartShape.Pad, 5.2 + (1.27 * i), 15, 0.8, 2.4, 0.05)),
            .. Enumerable.Range(0, 40).Select(i => new ScenePart($"Q{i}", PartShape.Pad, 5.2 + (1.27 * i), 11, 0.8, 1.6, 0.05)),
            .. beside,
        ],
    };
}
