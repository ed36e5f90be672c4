using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Measuring.Cameras;
using Lidoff.Seeing.Measuring.Edges;
using Lidoff.Seeing.Rendering;

namespace Lidoff.Seeing.Tests.Measuring.Edges;

/// <summary>What straight edges say of the camera, against the camera that rendered them (its own geometry, with rotations).</summary>
public sealed class BoardLinesTests
{
    [Theory]
    [InlineData(0, 0)]
    [InlineData(0, 20)]
    [InlineData(5, 30)]
    [InlineData(10, 10)]
    [InlineData(15, 0)]
    [InlineData(-10, 0)]
    public void A_boards_edges_converge_as_its_slant_says(double slant, double turn)
    {
        var scene = Brindle.MainTop() with { TiltDegrees = slant, TurnDegrees = turn, RulerMm = 30 };
        var seen = Look(scene)!.Seen;
        // Lines parallel on a plane at slant t meet at tan t·(half a side)/(focal length in px) per half side from the middle (geometry);
        // the scene's lower edge comes nearer, so that lines open downwards.
        var convergence = -Math.Tan(slant * Math.PI / 180) * (scene.Width / 2.0) / (scene.PxPerMm * scene.CameraDistanceMm);
        Assert.Equal(0, seen[0], 0.002);
        Assert.Equal(convergence, seen[1], 0.002);
        Assert.Equal(0, seen[3], 0.002);
    }

    [Theory]
    [InlineData(-0.05)]
    [InlineData(0.05)]
    public void A_bowing_lens_is_read_from_bowed_lines(double lens)
    {
        // The picture drawn again through r' = r(1 + k·r²), r in half long sides. Backwards that is a bend of −k in the middle and another one at the
        // corner, 1.25 half long sides out; one number for both lies between them, or within two of its own doubts.
        var bent = Bent(Grey(Brindle.MainTop() with { Width = 1000, Height = 750, PxPerMm = 24 }), lens);
        var slant = BoardLines.Read(EdgeSegments.Find(bent, 18), bent.Width, bent.Height)!;
        var doubt = Math.Sqrt(slant.Covariance[3, 3]);
        var corner = 1.25;
        for (var round = 0; round < 200; round++) corner = 1.25 / (1 + (lens * corner * corner));
        var there = ((corner / 1.25) - 1) / (1.25 * 1.25);
        Assert.InRange(slant.Seen[3], Math.Min(-lens, there) - (2 * doubt), Math.Max(-lens, there) + (2 * doubt));
        // One number is right for the middle or for the corner, not for both: by as much the bands of the picture part, and the doubt says so.
        Assert.InRange(doubt, 0.0005, Math.Abs(-lens - there));
        Assert.True(Math.Abs(slant.Seen[3]) > 5 * Math.Sqrt(slant.Covariance[3, 3]));
        Assert.Equal(0, slant.Seen[1], 0.006);
    }

    [Fact]
    public void Parts_set_every_which_way_say_nothing()
    {
        var random = new Random(4);
        var parts = Enumerable.Range(0, 40).Select(i => new ScenePart($"U{i}", PartShape.Chip, 3 + (i % 8 * 4.2), 3 + (i / 8 * 4.2), 2.6, 1.4, 0.6) { TurnDegrees = random.NextDouble() * 90 }).ToList();
        Assert.Null(Look(new() { BoardWidthMm = 60, BoardHeightMm = 60, LookAt = (18, 12), Parts = parts, Mask = MaskColour.None, Width = 1200, Height = 900, PxPerMm = 32 }));
    }

    [Theory]
    [InlineData(12, true)]
    [InlineData(0, false)]
    public void One_known_length_and_a_slanted_picture_give_the_far_length_and_the_warning(double slant, bool warned)
    {
        // The board's upper edge is known; its lower one, nearer to the slanted camera by a tenth, is asked for.
        var scene = Brindle.MainTop() with { TiltDegrees = slant };
        var (frame, truth) = (new PictureFrame(scene.Width, scene.Height), SceneTruth.Of(scene).Outline);
        var job = new MeasureJob
        {
            Image = "x",
            References = [new(truth[0], truth[1], scene.BoardWidthMm)],
            Targets = [new("far edge", new TargetLength("far edge", truth[3], truth[2]))],
        };
        var blind = Measurement.Run(job, frame).Value[0].Length.Value;
        var length = Measurement.Run(job, frame, new(Look(scene), false)).Value[0].Length.Value;
        Assert.Equal(scene.BoardWidthMm, length.ValueMm, 0.01 * scene.BoardWidthMm);
        Assert.InRange(scene.BoardWidthMm, length.LowMm, length.HighMm);
        Assert.True(length.UMm < blind.UMm / 2);
        Assert.Equal(warned, length.Warnings.Any(warning => warning.Code == "tilt"));
        if (!warned) Assert.Empty(length.Warnings);
    }

    private static PictureSlant? Look(Scene scene)
    {
        var grey = Grey(scene);
        return BoardLines.Read(EdgeSegments.Find(grey, 18), grey.Width, grey.Height);
    }

    private static GreyPicture Grey(Scene scene)
    {
        var pixels = SceneRenderer.Render(scene).Pixels;
        return new(scene.Width, scene.Height, [.. Enumerable.Range(0, scene.Width * scene.Height).Select(i => ((299 * pixels[3 * i]) + (587 * pixels[(3 * i) + 1]) + (114 * pixels[(3 * i) + 2])) / 1000f)], 1);
    }

    private static GreyPicture Bent(GreyPicture grey, double lens)
    {
        var (half, cx, cy) = (grey.Width / 2.0, grey.Width / 2.0, grey.Height / 2.0);
        var values = new float[grey.Values.Length];
        for (var y = 0; y < grey.Height; y++)
        {
            for (var x = 0; x < grey.Width; x++)
            {
                var (u, v) = ((x + 0.5 - cx) / half, (y + 0.5 - cy) / half);
                var (a, b) = (u, v);
                for (var round = 0; round < 10; round++)
                {
                    var grown = 1 + (lens * ((a * a) + (b * b)));
                    (a, b) = (u / grown, v / grown);
                }

                var (px, py) = (Math.Clamp((a * half) + cx - 0.5, 0, grey.Width - 1.001), Math.Clamp((b * half) + cy - 0.5, 0, grey.Height - 1.001));
                var (ix, iy) = ((int)px, (int)py);
                var (fx, fy) = ((float)(px - ix), (float)(py - iy));
                values[(y * grey.Width) + x] = (grey.At(ix, iy) * (1 - fx) * (1 - fy)) + (grey.At(ix + 1, iy) * fx * (1 - fy)) + (grey.At(ix, iy + 1) * (1 - fx) * fy) + (grey.At(ix + 1, iy + 1) * fx * fy);
            }
        }

        return grey with { Values = values };
    }
}
