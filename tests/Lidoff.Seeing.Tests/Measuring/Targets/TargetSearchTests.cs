using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Measuring.Edges;
using Lidoff.Seeing.Measuring.Targets;
using Lidoff.Seeing.Rendering;

namespace Lidoff.Seeing.Tests.Measuring.Targets;

/// <summary>Targets as they lie on benches: half out of the picture, covered, printed on paper that bows, and things that only look like one. Truth is the renderer's.</summary>
public sealed class TargetSearchTests(ITestOutputHelper output)
{
    private static TargetScene Board(TargetPattern pattern) => new(pattern, 12, 9, 2) { Width = 640, Height = 480, PxPerMm = 20, SlantDegrees = 10, TurnDegrees = 20, Bend = 0.02 };

    [Theory]
    [InlineData(TargetPattern.Checker)]
    [InlineData(TargetPattern.Dots)]
    public void Every_place_is_found_where_it_is_whatever_the_turn(TargetPattern pattern)
    {
        foreach (var turn in new[] { 0.0, 45, 90, 137 })
        {
            var scene = Board(pattern) with { TurnDegrees = turn };
            var found = Find(scene);
            Assert.Equal(pattern, found.Pattern);
            var apart = Apart(scene, found);
            output.WriteLine($"{pattern} at {turn}°: {found.Places.Count} places, farthest {apart:0.000} px, bend {found.Bend:0.0000} ± {found.BendU:0.0000}");
            Assert.InRange(found.Places.Count, 95, 108);
            Assert.InRange(apart, 0, 0.25);
            Assert.InRange(found.Bend, 0.02 - (4 * found.BendU), 0.02 + (4 * found.BendU));
            Assert.True(found.LensKnown);
        }
    }

    [Theory]
    [InlineData(TargetPattern.Checker)]
    [InlineData(TargetPattern.Dots)]
    public void Half_out_of_the_picture_or_covered_what_is_seen_of_it_serves(TargetPattern pattern)
    {
        // Its middle stands at the picture's right edge: half of its columns are left.
        var half = Board(pattern) with { TurnDegrees = 4, Off = (15.5, 0) };
        var found = Find(half);
        Assert.InRange(found.Places.Count, 45, 66);
        Assert.InRange(Apart(half, found), 0, 0.25);
        // A tool lies on it, and the grid goes around.
        var covered = Board(pattern) with { Covered = (0.35, 0, 0.55, 0.6) };
        found = Find(covered);
        Assert.InRange(found.Places.Count, 60, 95);
        Assert.InRange(Apart(covered, found), 0, 0.25);
    }

    [Fact]
    public void Steps_are_counted_whole_so_that_lengths_come_out_whatever_part_is_seen()
    {
        var scene = Board(TargetPattern.Checker) with { Covered = (0.35, 0, 0.55, 0.6) };
        var target = KnownTarget.Of(Find(scene), 2, 0.001);
        var picture = ScaledPicture.Of(new() { Image = "x", References = [target.Longest(0)], Targets = [] }, scene.Frame).Value;
        foreach (var (x1, y1, x2, y2) in new[] { (0.0, 0.0, 22.0, 16.0), (0, 16, 22, 0), (4, 2, 4, 14) })
        {
            var truth = Math.Sqrt(((x1 - x2) * (x1 - x2)) + ((y1 - y2) * (y1 - y2)));
            var length = picture.Length(new("t", scene.Show(x1, y1), scene.Show(x2, y2), ClickPx: 0.05)).Value;
            Assert.Equal(truth, length.ValueMm, 0.0015 * truth);
            Assert.DoesNotContain(length.Warnings, warning => warning.Code is "unequal-axes" or "reference-disagrees");
        }
    }

    [Fact]
    public void What_stands_above_the_target_is_drawn_nearer_by_its_height()
    {
        // Similar triangles: h above the plane under a camera Z away shows Z/(Z − h) as large. Here Z = f · half / (px/mm) = 48 mm.
        var scene = Board(TargetPattern.Checker) with { SlantDegrees = 0, Bend = 0 };
        var target = KnownTarget.Of(Find(scene), 2, 0.001);
        var picture = ScaledPicture.Of(new() { Image = "x", References = [target.Longest(0)], Targets = [], CameraDistanceMm = 48 }, scene.Frame).Value;
        var length = picture.Length(new("t", scene.Show(4, 4, 3), scene.Show(16, 4, 3), 3, 0.05)).Value;
        Assert.Equal(12, length.ValueMm, 0.06);
        var level = picture.Length(new("t", scene.Show(4, 4, 3), scene.Show(16, 4, 3), 0, 0.05)).Value;
        Assert.Equal(12 * 48 / 45.0, level.ValueMm, 0.03);
    }

    [Fact]
    public void A_wrong_pitch_is_told_by_another_known_length()
    {
        var scene = Board(TargetPattern.Checker);
        var found = Find(scene);
        var known = new ReferenceLength(scene.Show(2, 6), scene.Show(18, 6), 16, 0.02) { ClickPx = 0.5 };
        Assert.DoesNotContain("reference-disagrees", Codes(2));
        // Taken for the next size of a printed sheet; and an inch grid taken for a millimetre one.
        Assert.Contains("reference-disagrees", Codes(2.5));
        Assert.Contains("reference-disagrees", Codes(2.1));

        IEnumerable<string> Codes(double pitch)
        {
            var job = new MeasureJob { Image = "x", References = [known, KnownTarget.Of(found, pitch, KnownTarget.PrintedU * pitch).Longest(0)], Targets = [] };
            return ScaledPicture.Of(job, scene.Frame).Value.Length(new("t", scene.Show(4, 4), scene.Show(12, 8))).Value.Warnings.Select(warning => warning.Code);
        }
    }

    [Fact]
    public void Bowed_paper_is_refused_with_the_figure_and_nearly_flat_paper_counts_less()
    {
        // 39 mm wide, its middle 2 mm above its edges, 48 mm from the camera.
        var bowed = new TargetScene(TargetPattern.Checker, 14, 9, 3) { Width = 640, Height = 480, PxPerMm = 13, BowMm = 2.5 };
        var refused = TargetSearch.Find(bowed.Grey(), bowed.Frame);
        Assert.False(refused.Ok);
        output.WriteLine(refused.Faults[0].Say);
        Assert.Matches("^The target is not flat, or the lens bends as no simple one does: its parts lie [0-9.]+ % of a pitch off a flat grid \\([0-9]+ µm where the pitch is 1 mm\\)", refused.Faults[0].Say);
        var nearly = bowed with { BowMm = 0.5 };
        var flat = KnownTarget.Of(Find(bowed with { BowMm = 0 }), 3, 0);
        var bent = KnownTarget.Of(Find(nearly), 3, 0);
        output.WriteLine($"flat {flat.RelativeU:0.00000}, bowed by 0.5 mm {bent.RelativeU:0.00000}");
        Assert.True(bent.RelativeU > 3 * flat.RelativeU && bent.RelativeU > 0.0005);
    }

    [Theory]
    [InlineData(4, 4, 0.5)]
    [InlineData(7, 5, 0.3)]
    [InlineData(9, 7, 0.5)]
    public void Few_large_dots_that_fill_the_picture_are_found(int columns, int rows, double dot)
    {
        var scene = new TargetScene(TargetPattern.Dots, columns, rows, 2) { PxPerMm = 0.5 * 1000 / (columns * 2.0), SlantDegrees = 5, TurnDegrees = 8, Dot = dot };
        var found = Find(scene);
        Assert.Equal((TargetPattern.Dots, columns * rows), (found.Pattern, found.Places.Count));
        Assert.Equal(2 * scene.PxPerMm, found.StepPx, 0.02 * 2 * scene.PxPerMm);
    }

    [Fact]
    public void Where_it_fills_little_of_the_picture_the_lens_stays_unknown_and_is_said_to()
    {
        var small = new TargetScene(TargetPattern.Checker, 6, 5, 1) { Width = 640, Height = 480, PxPerMm = 16 };
        var found = Find(small);
        Assert.False(found.LensKnown);
        Assert.Matches("^The target fills [0-9]+ % of the picture: the lens stays unknown", TargetSentences.Lens(found));
    }

    [Fact]
    public void Three_corners_or_one_row_are_no_target()
    {
        Assert.Equal(TargetSentences.None.Say, None(Board(TargetPattern.Checker) with { Covered = (0, 0, 0.82, 1) }));
        Assert.Equal(TargetSentences.None.Say, None(new(TargetPattern.Checker, 2, 1, 4) { Width = 640, Height = 480 }));
        Assert.Equal(TargetSentences.None.Say, None(new(TargetPattern.Dots, 20, 2, 1) { Width = 640, Height = 480, PxPerMm = 25 }));
        Assert.Equal(TargetSentences.None.Say, None(new(TargetPattern.Dots, 1, 1, 4) { Width = 640, Height = 480 }));
    }

    [Fact]
    public void A_perforated_board_is_a_dot_grid_of_its_holes()
    {
        // Prototype board: holes of 1.0 mm every 2.54 mm (0.1 in), dark on brown.
        var scene = new TargetScene(TargetPattern.Dots, 15, 11, 2.54) { Width = 640, Height = 480, PxPerMm = 14, Dot = 1.0 / 2.54, Tones = (40, 125), SlantDegrees = 8, TurnDegrees = -12 };
        var found = Find(scene);
        Assert.Equal(TargetPattern.Dots, found.Pattern);
        Assert.InRange(found.Places.Count, 140, 165);
    }

    [Fact]
    public void A_keyboard_and_a_brick_wall_are_none()
    {
        // Keys: 4 by 12 rounded squares, every row shifted against the one above as on every typewriter; bricks likewise, by half.
        foreach (var (tall, shift) in new[] { (46.0, 0.3), (24, 0.5) })
        {
            var values = new float[640 * 480];
            for (var i = 0; i < values.Length; i++)
            {
                var (x, y) = (i % 640, i / 640);
                var row = (int)(y / tall);
                var (u, v) = (((x + (row * shift * 50)) % 50) - 25, (y % tall) - (tall / 2));
                var key = Math.Pow(Math.Abs(u) / 21, 6) + Math.Pow(Math.Abs(v) / ((tall / 2) - 4), 6) < 1;
                values[i] = (float)((key ? 60 : 180) + (3 * Scatter.Normal(5, x, y)));
            }

            Assert.Equal(TargetSentences.None.Say, TargetSearch.Find(new(640, 480, values, 1), new(640, 480)).Faults[0].Say);
        }
    }

    [Fact]
    public void A_drawn_board_full_of_round_things_and_corners_is_none()
    {
        var scene = Brindle.MainTop() with { RulerMm = 30 };
        var pixels = SceneRenderer.Render(scene).Pixels;
        var grey = new GreyPicture(scene.Width, scene.Height, [.. Enumerable.Range(0, scene.Width * scene.Height).Select(i => (float)pixels[(3 * i) + 1])], 1);
        Assert.Equal(TargetSentences.None.Say, TargetSearch.Find(grey, new(scene.Width, scene.Height)).Faults[0].Say);
    }

    private static string None(TargetScene scene)
    {
        var looked = TargetSearch.Find(scene.Grey(), scene.Frame);
        return looked.Ok ? $"found {looked.Value.Pattern} of {looked.Value.Places.Count}" : looked.Faults[0].Say;
    }

    private static FoundTarget Find(TargetScene scene)
    {
        var looked = TargetSearch.Find(scene.Grey(), scene.Frame);
        Assert.True(looked.Ok, looked.Ok ? "" : $"{scene}: {looked.Faults[0].Say}");
        return looked.Value;
    }

    /// <summary>How far the farthest place lies from where the renderer put the corner or dot nearest to it, px.</summary>
    private static double Apart(TargetScene scene, FoundTarget found) => found.Places.Max(place =>
    {
        var (x, y) = scene.Under(place.At.X, place.At.Y);
        return scene.Show(Math.Round(x / scene.PitchMm) * scene.PitchMm, Math.Round(y / scene.PitchMm) * scene.PitchMm).DistanceTo(place.At);
    });
}
