using Lidoff.Evidence.Working;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Pictures;
using NetVips;

namespace Lidoff.Seeing.Tests.Pictures;

public sealed class HeicTests : IDisposable
{
    // What the decoder of libheif 1.15.1 (heif-convert to PNG) gives for the small file: mean over all pixels and channels, 0 to 255.
    private const double OutsideMean = 103.990174;

    private static readonly double[] Red = [220, 40, 41], Ground = [40, 90, 159];
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void A_heic_has_the_size_and_colours_that_another_decoder_finds()
    {
        var (path, header) = Stored(SmallHeic.Bytes);
        Assert.Equal((320, 240, 1, "image/heic"), (header.Width, header.Height, header.Orientation, header.Kind.MediaType));
        using var image = PictureFile.Upright(path, header);
        Assert.InRange(image.Avg(), OutsideMean - 0.5, OutsideMean + 0.5);
        Near(Red, image.Getpoint(20, 20));
        Near([241, 230, 60], image.Getpoint(290, 210));
        Near(Ground, image.Getpoint(300, 20));
    }

    // Where the red block's middle stands in what heif-convert makes of the same bytes.
    [Theory]
    [InlineData("irot", 1, 240, 320, 40, 260)]
    [InlineData("irot", 3, 240, 320, 200, 60)]
    [InlineData("irot", 2, 320, 240, 260, 200)]
    [InlineData("imir", 0, 320, 240, 60, 200)]
    [InlineData("imir", 1, 320, 240, 260, 40)]
    public void Turns_and_mirrors_count_once(string box, byte value, int width, int height, int x, int y)
    {
        var (path, header) = Stored(SmallHeic.Turned(box, value));
        Assert.Equal((width, height), (header.Width, header.Height));
        using var upright = PictureFile.Upright(path, header);
        Assert.Equal((width, height), (upright.Width, upright.Height));
        Near(Red, upright.Getpoint(x, y));
        using var small = Image.NewFromBuffer(Thumbnail.Jpeg(path, "a.heic", header, 160).Value);
        Near(Red, small.Getpoint(x * small.Width / width, y * small.Height / height));
    }

    [Fact]
    public void Tiles_and_copies_are_made_of_it_without_its_exif()
    {
        var (path, header) = Stored(SmallHeic.Bytes);
        Assert.Contains("Exif", System.Text.Encoding.Latin1.GetString(SmallHeic.Bytes), StringComparison.Ordinal);
        using var copy = new MemoryStream();
        Assert.Equal("image/jpeg", SharedCopy.Write(path, "a.heic", header, copy).Value);
        Assert.DoesNotContain("Exif", System.Text.Encoding.Latin1.GetString(copy.ToArray()), StringComparison.Ordinal);
        var tiles = TilePyramid.Make(path, "a.heic", header, new string('a', 64), folder.Root, new Silent()).Value;
        Assert.Equal((320, 240), (tiles.Width, tiles.Height));
        using var tile = Image.NewFromBuffer(tiles.Jpeg(tiles.TopLevel, 0, 0).Value);
        Near(Red, tile.Getpoint(20, 20));
    }

    [Fact]
    public void A_cut_off_heic_says_so()
    {
        var bytes = SmallHeic.Bytes;
        File.WriteAllBytes(folder.File("a.heic"), bytes[..(bytes.Length * 2 / 3)]);
        Assert.Equal("“a.heic” is a HEIC picture whose pixels cannot be read to the end: cut off or damaged. Copy it again from where it came.", Say(PictureFile.Check(folder.File("a.heic"), "a.heic")));
        File.WriteAllBytes(folder.File("b.heic"), bytes[..60]);
        Assert.Equal("“b.heic” begins like a HEIC picture, but its header cannot be read.", Say(PictureFile.Read(folder.File("b.heic"), "b.heic")));
    }

    [Theory]
    [InlineData(300, 200)]
    [InlineData(9000, 9000)]
    public void A_heic_that_lies_about_its_size_says_so(int width, int height)
    {
        var (path, header) = Stored(SmallHeic.Sized(width, height));
        const string lie = "“a.heic” is a HEIC picture whose pixels cannot be read to the end: cut off or damaged. Copy it again from where it came.";
        Assert.Equal(lie, Say(PictureFile.Check(path, "a.heic")));
        Assert.Equal(lie, Say(Thumbnail.Jpeg(path, "a.heic", header, 100)));
        Assert.Equal(lie, Say(TilePyramid.Make(path, "a.heic", header, new string('b', 64), folder.Root, new Silent())));
        Assert.Equal(lie, Say(SharedCopy.Write(path, "a.heic", header, new MemoryStream())));
    }

    [Theory]
    [InlineData(30_000, 30_000, "900 megapixels")]
    [InlineData(70_000, 70_000, "4900 megapixels")]
    [InlineData(10_001, 10_000, "100 megapixels")]
    public void Too_many_pixels_are_refused_before_one_is_decoded(int width, int height, string says)
    {
        File.WriteAllBytes(folder.File("a.heic"), SmallHeic.Sized(width, height));
        Assert.Equal($"“a.heic” would have {width} × {height} pixels ({says}); Lidoff opens at most 100 megapixels and 65500 pixels a side.", Say(PictureFile.Read(folder.File("a.heic"), "a.heic")));
    }

    private static string Say<T>(Outcome<T> outcome) => Assert.Single(outcome.Faults).Say;

    private static void Near(double[] wanted, double[] found)
    {
        for (var band = 0; band < 3; band++) Assert.InRange(found[band], wanted[band] - 6, wanted[band] + 6);
    }

    private (string Path, PictureHeader Header) Stored(byte[] bytes)
    {
        File.WriteAllBytes(folder.File("a.heic"), bytes);
        return (folder.File("a.heic"), PictureFile.Read(folder.File("a.heic"), "a.heic").Value);
    }

    private sealed class Silent : IJobReport
    {
        public CancellationToken Stop => CancellationToken.None;

        public void Say(long done, long total, string words)
        {
        }
    }
}
