using Lidoff.Seeing.Advising;
using Lidoff.Seeing.Pictures;
using Lidoff.Seeing.Rendering;
using NetVips;

namespace Lidoff.Seeing.Tests.Advising;

public sealed class PictureWorthTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("lidoff-test-").FullName;

    // An edge under a Gaussian blur of σ rises from 10 to 90 % within 2·1.2816·σ (tables of the normal distribution).
    [Theory]
    [InlineData(1.0, 0)]
    [InlineData(2.0, 0)]
    [InlineData(4.0, 0)]
    [InlineData(1.0, 2)]
    [InlineData(2.0, 2)]
    [InlineData(4.0, 2)]
    public void The_width_of_an_edge_tells_the_blur(double sigma, double noise)
    {
        var worth = Worth(Bars(sigma, noise));
        Assert.InRange(worth.EdgePx!.Value / (2 * 1.2816 * sigma), 0.75, 1.25);
    }

    [Theory]
    [InlineData(1200, 2000)]
    [InlineData(2000, 700)]
    [InlineData(90, 60)]
    public void Every_format_is_read_from_top_to_bottom_and_gives_what_its_pixels_give(int width, int height)
    {
        // The same pixels in every lossless format; the low picture's patches lie over one another.
        using var picture = Bars(1.3, 1, width, height);
        string[] paths = [.. new[] { "p.png", "p.tif", "p.webp" }.Select(name => Path.Combine(folder, name))];
        picture.Pngsave(paths[0], interlace: true);
        picture.Tiffsave(paths[1], tile: true);
        picture.Webpsave(paths[2], lossless: true);
        var plain = Worth(Bars(1.3, 1, width, height));
        Assert.All(paths, path => Assert.Equal(plain, PictureWorth.Of(path, "p", PictureFile.Read(path, "p").Value).Value));
    }

    [Fact]
    public void A_picture_that_breaks_off_says_so()
    {
        var path = Path.Combine(folder, "half.png");
        using (var picture = Bars(1.3, 1, 1200, 2000)) File.WriteAllBytes(path, [.. picture.PngsaveBuffer().SkipLast(4000)]);
        Assert.Equal(
            "“half.png” is a PNG picture whose pixels cannot be read to the end: cut off or damaged. Copy it again from where it came.",
            PictureWorth.Of(path, "half.png", PictureFile.Read(path, "half.png").Value).Faults[0].Say);
    }

    [Fact]
    public void A_blurred_picture_reads_no_small_letters_however_many_pixels_it_has()
    {
        // 50 px/mm read letters of 0.3 mm when sharp; an edge four times as wide as a sharp one makes that 1.2 mm.
        Assert.Equal(0.3, new PictureWorth(1.8, 0).LetterMm(50), 9);
        Assert.Equal(1.2, new PictureWorth(10, 0).LetterMm(50), 9);
        Assert.Equal(0.3, new PictureWorth(null, 0).LetterMm(50), 9);
    }

    [Fact]
    public void Burnt_out_light_is_counted_and_is_no_edge()
    {
        using var white = (Image.Black(500, 400) + 255).Cast(Enums.BandFormat.Uchar);
        using var half = (Image.Black(1000, 400) + 40).Cast(Enums.BandFormat.Uchar).Insert(white, 0, 0);
        var worth = Worth(half.Copy());
        Assert.InRange(worth.Burnt, 0.4, 0.6);
        Assert.Null(worth.EdgePx);
    }

    [Fact]
    public void A_rendered_board_is_sharp_and_a_picture_of_nothing_has_no_edge()
    {
        var path = Path.Combine(folder, "board.png");
        using (var file = File.Create(path)) SceneRenderer.Render(Brindle.LampTop()).WritePng(file);
        var sharp = PictureWorth.Of(path, "board.png", PictureFile.Read(path, "board.png").Value).Value;
        Assert.InRange(sharp.EdgePx!.Value, 0.8, 4);
        Assert.Null(Worth((Image.Black(300, 300) + 90).Cast(Enums.BandFormat.Uchar)).EdgePx);
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    // Upright and lying bars of 24 px, as different as a part is from its board.
    private static Image Bars(double sigma, double noise, int width = 1200, int height = 900)
    {
        using var at = Image.Xyz(width, height);
        using var columns = (at[0] / 24).Floor().Cast(Enums.BandFormat.Int) & 1;
        using var rows = (at[1] / 24).Floor().Cast(Enums.BandFormat.Int) & 1;
        using var bars = ((columns ^ rows) * 120) + 60;
        using var blurred = bars.Cast(Enums.BandFormat.Float).Gaussblur(sigma, minAmpl: 0.01, precision: Enums.Precision.Float);
        using var grain = Image.Gaussnoise(width, height, sigma: noise, mean: 0, seed: 7);
        return (noise > 0 ? blurred + grain : blurred).Rint().Cast(Enums.BandFormat.Uchar);
    }

    private PictureWorth Worth(Image image)
    {
        var path = Path.Combine(folder, "p.png");
        using (image) image.Pngsave(path);
        return PictureWorth.Of(path, "p.png", PictureFile.Read(path, "p.png").Value).Value;
    }
}
