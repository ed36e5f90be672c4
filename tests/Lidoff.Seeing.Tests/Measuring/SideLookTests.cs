using System.Globalization;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Measuring.Edges;
using Lidoff.Seeing.Rendering;
using Lidoff.Seeing.Rendering.Invented;

namespace Lidoff.Seeing.Tests.Measuring;

/// <summary>
/// Boards looked at from the side, as pictures of a whole product often are, by the renderer's camera. Such a slant is far beyond what hands on a bench make: a belief that holds it back
/// made a depth a fifth too short (on a photograph of a board at some 48° that two packages of JEDEC MS-026 tell: 14 mm read 11.0 ± 0.7).
/// </summary>
public sealed class SideLookTests(ITestOutputHelper output)
{
    [Theory]
    [InlineData(40, 1.6)]
    [InlineData(45, 2)]
    [InlineData(50, 1.3)]
    [InlineData(30, 1.5)]
    public void The_depth_of_a_board_that_is_looked_at_from_the_side_lies_in_its_interval(double slant, double longSides)
    {
        var (truth, depth) = Depth(slant, longSides);
        Assert.InRange(truth, depth.LowMm, depth.HighMm);
        Assert.Contains(depth.Warnings, warning => warning.Code == "tilt");
    }

    // Nine in ten is not reached: how far the slant goes and how long the lens is show in the same edges, and from afar (2.1 and 2.5 long sides of what the picture shows) only 1 of 12
    // intervals held, of near looks 10 of 12. Measured 11 of 24; 0 of 24 where what is usual of hands was believed of these as well. A slant was told in 23.
    [Fact]
    public void Of_every_slant_and_distance_alike_no_fewer_depths_hold_than_were_measured()
    {
        var (held, near, told) = (0, 0, 0);
        foreach (var (slant, longSides) in new[] { 30, 34, 38, 42, 46, 50 }.SelectMany(slant => new[] { 1.3, 1.7, 2.1, 2.5 }.Select(longSides => (slant, longSides))))
        {
            var (truth, depth) = Depth(slant, longSides);
            var holds = depth.LowMm <= truth && truth <= depth.HighMm;
            if (holds) held++;
            if (holds && longSides < 2) near++;
            if (depth.Warnings.Any(warning => warning.Code == "tilt")) told++;
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{slant} degrees, {longSides} long sides: {depth.LowMm:0.0} to {depth.HighMm:0.0} mm of {truth:0.0}"));
        }

        output.WriteLine($"{held} of 24 held, {near} of the 12 near ones, {told} told");
        Assert.InRange(held, 11, 24);
        Assert.InRange(near, 10, 12);
        Assert.InRange(told, 23, 24);
    }

    [Fact]
    public void Two_known_lengths_across_one_another_tell_the_slant_and_none_of_them_is_called_wrong()
    {
        var (scene, look) = Scene(48, 2.4);
        var outline = SceneTruth.Of(scene).Outline;
        var job = new MeasureJob
        {
            Image = "x",
            References = [new(outline[0], outline[1], scene.BoardWidthMm), new(outline[0], outline[3], scene.BoardHeightMm)],
            Targets = [new("depth", new TargetLength("depth", outline[1], outline[2])), new("far edge", new TargetLength("far edge", outline[3], outline[2]))],
        };
        foreach (var (target, truth) in Measurement.Run(job, new(scene.Width, scene.Height), look).Value.Zip([scene.BoardHeightMm, scene.BoardWidthMm]))
        {
            var length = target.Length.Value;
            Assert.InRange(truth, length.LowMm, length.HighMm);
            Assert.InRange(length.HighMm - length.LowMm, 0, 0.06 * truth);
            Assert.Equal(["tilt"], length.Warnings.Select(warning => warning.Code));
        }
    }

    // By the nearer edge as the one known length.
    private static (double Truth, MeasuredLength Depth) Depth(double slant, double longSides)
    {
        var (scene, look) = Scene(slant, longSides);
        var outline = SceneTruth.Of(scene).Outline;
        var job = new MeasureJob { Image = "x", References = [new(outline[0], outline[1], scene.BoardWidthMm)], Targets = [new("depth", new TargetLength("depth", outline[1], outline[2]))] };
        return (scene.BoardHeightMm, Measurement.Run(job, new(scene.Width, scene.Height), look).Value[0].Length.Value);
    }

    private static (Scene Scene, PictureLook Look) Scene(double slant, double longSides)
    {
        var scene = Brindle.MainTop() with { TiltDegrees = slant, Width = 1000, Height = 750, PxPerMm = 24, CameraDistanceMm = longSides * 1000 / 24 };
        var pixels = SceneRenderer.Render(scene).Pixels;
        var grey = new GreyPicture(scene.Width, scene.Height, [.. Enumerable.Range(0, scene.Width * scene.Height).Select(i => ((299 * pixels[3 * i]) + (587 * pixels[(3 * i) + 1]) + (114 * pixels[(3 * i) + 2])) / 1000f)], 1);
        return (scene, new(BoardLines.Read(EdgeSegments.Find(grey, 18), grey.Width, grey.Height), false));
    }
}
