using Lidoff.Seeing.Composing;
using OpenCvSharp;

namespace Lidoff.Seeing.Tests.Composing;

public sealed class LightSetTests
{
    private static Bench Round(int lights, int moved = -1, double x = 0, double y = 0)
    {
        var bench = new Bench();
        for (var k = 0; k < lights; k++) bench.Add(LightBench.Picture(k * 360.0 / lights, 20 + k, k == moved ? x : 0, k == moved ? y : 0), LightBench.Width, LightBench.Height);
        return bench;
    }

    [Fact]
    public void A_worn_mark_stands_out_farther_than_in_the_best_single_picture()
    {
        using var bench = Round(4);
        var made = bench.Make(ComposeMethod.Lights).Value;
        var best = bench.Pictures.Max(each =>
        {
            using var one = Cv2.ImRead(each.Path, ImreadModes.Grayscale);
            return LightBench.Readable(one);
        });
        using var contrast = Bench.Opened(made.Picture);
        using var relief = Bench.Opened(made.Second!);
        // Four lights at right angles: in any one of them the strokes that run towards the lamp are hidden. Noise of four pictures
        // together is half of one's, which alone would make a mark stand out twice as far. Measured: best single 2.35, contrast 4.75 (2.0 times), relief 4.0
        // (1.7 times: it leaves out what the lights have in common).
        Assert.True(LightBench.Readable(contrast) > 1.9 * best, $"{LightBench.Readable(contrast)} against {best}");
        Assert.True(LightBench.Readable(relief) > 1.6 * best, $"{LightBench.Readable(relief)} against {best}");
        Assert.Equal((0, 0), made.FirstAt);
        Assert.Empty(made.Says);
    }

    [Fact]
    public void A_camera_that_moved_a_little_is_moved_back_and_that_is_said()
    {
        using var still = Round(4);
        using var moved = Round(4, moved: 2, 2.4, -1.3);
        using var wanted = Bench.Opened(still.Make(ComposeMethod.Lights).Value.Picture);
        var made = moved.Make(ComposeMethod.Lights).Value;
        using var got = Bench.Opened(made.Picture);
        // √(2.4² + 1.3²) = 2.73.
        Assert.Matches("^The camera had moved by 2\\.[5-9] px at “p03.jpg”; that was taken back\\.$", Assert.Single(made.Says));
        // Measured: 1.05, since the fourth picture was drawn anew; a half of a pixel left over would cost a tenth.
        Assert.True(LightBench.Readable(got) > 0.98 * LightBench.Readable(wanted));
    }

    [Fact]
    public void A_camera_that_moved_far_and_a_picture_of_something_else_are_refused()
    {
        using var moved = Round(4, moved: 2, 60, 20);
        Assert.Matches("^“p03.jpg” was taken 6[0-9] px away from the first picture, too far to be taken back: other slopes are seen from there\\. Take the light set again with the camera clamped\\.$", moved.Make(ComposeMethod.Lights).Faults[0].Say);
        using var other = Round(3);
        other.Add(Cloud(), LightBench.Width, LightBench.Height);
        Assert.Equal(
            "“p04.jpg” cannot be laid on the first picture of the light set: the camera was moved, or it shows something else. A light set is taken from one place; only the lamp moves.",
            other.Make(ComposeMethod.Lights).Faults[0].Say);
    }

    private static byte[] Cloud()
    {
        var pixels = new byte[LightBench.Width * LightBench.Height * 3];
        for (var i = 0; i < pixels.Length; i++) pixels[i] = (byte)(120 + (60 * Lidoff.Seeing.Rendering.Scatter.Even(3, i / 3 % LightBench.Width / 9, i / 3 / LightBench.Width / 7)));
        return pixels;
    }
}
