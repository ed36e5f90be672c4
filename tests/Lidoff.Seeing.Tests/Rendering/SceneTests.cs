using System.Security.Cryptography;
using Lidoff.Seeing.Tests.Measuring;
using Lidoff.Seeing.Pictures;
using Lidoff.Seeing.Rendering;

namespace Lidoff.Seeing.Tests.Rendering;

public sealed class SceneTests
{
    [Fact]
    public void The_same_scene_gives_the_same_pixels_and_another_seed_others()
    {
        var scene = Brindle.LampTop() with { Width = 500, Height = 400, PxPerMm = 18 };
        Assert.Equal(SceneRenderer.Render(scene).Pixels, SceneRenderer.Render(scene).Pixels);
        Assert.NotEqual(SceneRenderer.Render(scene).Pixels, SceneRenderer.Render(scene with { Seed = 9 }).Pixels);
        // Golden: written by this program on its first run, so that another machine that renders otherwise is found out.
        Assert.Equal("88fb5489be74ca77", Convert.ToHexStringLower(SHA256.HashData(SceneRenderer.Render(scene).Pixels))[..16]);
    }

    [Fact]
    public void A_pinhole_shows_a_tall_top_larger_by_the_distance_rule()
    {
        // h·r/Z (trade R67, geometry): a 6 mm top 10 mm up under a camera at 120 mm is drawn 120/110 as large.
        var scene = new Scene { BoardWidthMm = 30, BoardHeightMm = 20, Parts = [new("U1", PartShape.Chip, 15, 10, 6, 6, 10)], Width = 400, Height = 300, PxPerMm = 10 };
        var part = SceneRenderer.Render(scene).Parts[0];
        Assert.Equal(60 * 120 / 110.0, part.Left.DistanceTo(part.Right), 9);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(12)]
    public void A_rendered_board_is_measured_by_its_ruler(double turn)
    {
        var scene = Brindle.MainTop() with { Width = 1000, Height = 800, PxPerMm = 22, TurnDegrees = turn };
        var rendered = SceneRenderer.Render(scene);
        var (from, to) = rendered.Ruler!.Value;
        foreach (var part in rendered.Parts)
        {
            var length = Measured.One([new(from, to, 30)], new("t", part.Left, part.Right, part.Part.HeightMm), 1, 120, new(1000, 800));
            Assert.InRange(part.Part.LengthMm, length.LowMm, length.HighMm);
        }
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(7)]
    [InlineData(8)]
    public void Every_orientation_comes_back_upright(int orientation)
    {
        // The picture library's own rotation is the outside reference for ours.
        var scene = Brindle.LampTop() with { Width = 300, Height = 220, PxPerMm = 12, BlurPx = 0 };
        var upright = SceneRenderer.Render(scene);
        var path = Path.Combine(Path.GetTempPath(), $"lidoff-scene-{Environment.ProcessId}-{orientation}.png");
        try
        {
            using (var file = File.Create(path)) SceneRenderer.Render(scene with { Orientation = orientation }).WritePng(file);
            var header = PictureFile.Check(path, "scene.png");
            Assert.True(header.Ok);
            Assert.Equal((300, 220, orientation), (header.Value.Width, header.Value.Height, header.Value.Orientation));
            Assert.Equal(orientation is 2 or 4 or 5 or 7, header.Value.Mirrored);
            using var image = PictureFile.Upright(path, header.Value);
            Assert.Equal(upright.Pixels, image.WriteToMemory<byte>());
        }
        finally
        {
            File.Delete(path);
        }
    }
}
