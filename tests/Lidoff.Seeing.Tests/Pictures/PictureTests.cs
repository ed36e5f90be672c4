using System.Buffers.Binary;
using Lidoff.Evidence.Working;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Pictures;
using NetVips;

namespace Lidoff.Seeing.Tests.Pictures;

public sealed class PictureTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void A_header_is_read_without_decoding()
    {
        var path = Jpeg("a.jpg", 640, 480);
        var header = PictureFile.Read(path, "a.jpg").Value;
        Assert.Equal((640, 480, 3, 8, PictureColour.Rgb, 1), (header.Width, header.Height, header.Bands, header.Bits, header.Colour, header.Pages));
        Assert.Empty(header.Remarks);
    }

    [Fact]
    public void Two_gigapixels_are_refused_before_a_pixel_is_decoded()
    {
        // A PNG header (W3C PNG 11.2.2) that claims 46,341 × 46,341, with no pixels behind it.
        var bytes = File.ReadAllBytes(Png("small.png"));
        BinaryPrimitives.WriteInt32BigEndian(bytes.AsSpan(16), 46_341);
        BinaryPrimitives.WriteInt32BigEndian(bytes.AsSpan(20), 46_341);
        BinaryPrimitives.WriteUInt32BigEndian(bytes.AsSpan(29), Crc(bytes.AsSpan(12, 17)));
        File.WriteAllBytes(folder.File("huge.png"), bytes);
        Assert.Equal(
            "“huge.png” would have 46341 × 46341 pixels (2147 megapixels); Lidoff opens at most 400 megapixels and 65500 pixels a side.",
            Say(PictureFile.Read(folder.File("huge.png"), "huge.png")));
    }

    [Fact]
    public void A_cut_off_picture_is_found_out()
    {
        var bytes = File.ReadAllBytes(Jpeg("whole.jpg", 800, 600));
        File.WriteAllBytes(folder.File("cut.jpg"), bytes[..(bytes.Length / 2)]);
        Assert.True(PictureFile.Read(folder.File("cut.jpg"), "cut.jpg").Ok);
        Assert.Equal(
            "“cut.jpg” is a JPEG picture whose pixels cannot be read to the end: cut off or damaged. Copy it again from where it came.",
            Say(PictureFile.Check(folder.File("cut.jpg"), "cut.jpg")));
    }

    [Fact]
    public void What_is_no_picture_says_what_it_is()
    {
        File.WriteAllText(folder.File("note.jpg"), "only a note\n");
        Assert.Equal("“note.jpg” is a text, not a picture Lidoff can open (JPEG, PNG, TIFF, WebP, GIF, AVIF, HEIC).", Say(PictureFile.Read(folder.File("note.jpg"), "note.jpg")));
        Assert.Equal("There is no picture at “gone.jpg”.", Say(PictureFile.Read(folder.File("gone.jpg"), "gone.jpg")));
        File.WriteAllBytes(folder.File("head.jpg"), [0xFF, 0xD8, 0xFF, 0xE0, 0, 16]);
        Assert.Equal("“head.jpg” begins like a JPEG picture, but its header cannot be read.", Say(PictureFile.Read(folder.File("head.jpg"), "head.jpg")));
    }

    [Fact]
    public void Print_colours_depth_and_frames_are_remarked_and_still_shown()
    {
        using (var cmyk = Image.Black(60, 40, bands: 4).Cast(Enums.BandFormat.Uchar).Copy(interpretation: Enums.Interpretation.Cmyk)) cmyk.Tiffsave(folder.File("print.tif"));
        using (var deep = (Image.Black(60, 40) + 30_000).Cast(Enums.BandFormat.Ushort).Copy(interpretation: Enums.Interpretation.Grey16)) deep.Pngsave(folder.File("deep.png"));
        using (var frames = Noise(60, 80).Mutate(image => image.Set(GValue.GIntType, "page-height", 40))) frames.Gifsave(folder.File("two.gif"));
        Assert.Equal(["The picture is in print colours (CMYK); they are converted for the screen and kept as they are."], Remarks("print.tif"));
        Assert.Equal(["The picture has 16 bits a channel; it is shown with 8 and kept as it is."], Remarks("deep.png"));
        Assert.Equal(["The file holds 2 frames; the first is used."], Remarks("two.gif"));
        foreach (var name in new[] { "print.tif", "deep.png", "two.gif" })
        {
            using var small = Image.NewFromBuffer(Thumbnail.Jpeg(folder.File(name), name, PictureFile.Read(folder.File(name), name).Value, 30).Value);
            Assert.Equal(30, small.Width);
        }
    }

    [Fact]
    public void A_lying_orientation_and_a_cropped_size_are_remarked()
    {
        var path = folder.File("lies.jpg");
        using (var image = Noise(200, 100).Mutate(image => image.Set(GValue.GIntType, "orientation", 6))) image.Jpegsave(path);
        // The library writes the true size (Exif tag 0xA002, little endian); the lie goes in by hand.
        var bytes = File.ReadAllBytes(path);
        var at = bytes.AsSpan().IndexOf([(byte)0x02, (byte)0xA0]);
        Assert.Equal(200, BinaryPrimitives.ReadUInt16LittleEndian(bytes.AsSpan(at + 8)));
        BinaryPrimitives.WriteUInt16LittleEndian(bytes.AsSpan(at + 8), 4032);
        File.WriteAllBytes(path, bytes);
        var header = PictureFile.Read(path, "lies.jpg").Value;
        Assert.Equal((100, 200), (header.Width, header.Height));
        Assert.StartsWith("The camera wrote 4032 × 100 pixels and the file holds 200 × 100", Assert.Single(header.Remarks), StringComparison.Ordinal);
    }

    [Theory]
    // Exif 2.32: DateTime (0x0132) is when the file was changed, DateTimeOriginal (0x9003) when the picture was taken.
    [InlineData(1600, 1200, "2026:03:02 10:15:00", false)]
    [InlineData(1600, 1200, "2026:03:04 09:00:00", true)]
    [InlineData(640, 480, "2026:03:02 10:15:00", true)]
    public void A_picture_that_a_program_worked_on_since_may_show_less_than_the_camera_saw(int width, int height, string changed, bool worked)
    {
        var path = folder.File("worked.jpg");
        using (var image = Noise(width, height).Mutate(image =>
        {
            image.Set(GValue.GStrType, "exif-ifd0-DateTime", changed);
            image.Set(GValue.GStrType, "exif-ifd2-DateTimeOriginal", "2026:03:02 10:15:00");
            image.Set(GValue.GStrType, "exif-ifd2-FocalLengthIn35mmFilm", "75");
        }))
        {
            image.Jpegsave(path);
        }

        var header = PictureFile.Read(path, "worked.jpg").Value;
        Assert.Equal(worked, header.Worked);
        // 75 mm on a frame of 36 × 24 mm, over the diagonal, of a picture of 4 : 3 (Exif 2.32, tag 0xA405).
        Assert.Equal(75 / 43.267 * 1.25, header.FocalLongSides!.Value, 1e-9);
    }

    [Fact]
    public void A_shared_copy_has_neither_place_nor_serial_nor_owner()
    {
        var path = folder.File("told.jpg");
        using (var image = Noise(200, 100).Mutate(image =>
        {
            image.Set(GValue.GStrType, "exif-ifd3-GPSLatitude", "52/1 31/1 0/1");
            image.Set(GValue.GStrType, "exif-ifd2-BodySerialNumber", "SERIAL12345");
            image.Set(GValue.GStrType, "exif-ifd0-Artist", "Some Owner");
            image.Set(GValue.GIntType, "orientation", 6);
        }))
        {
            image.Jpegsave(path);
        }

        Assert.Contains("SERIAL12345", System.Text.Encoding.Latin1.GetString(File.ReadAllBytes(path)), StringComparison.Ordinal);
        using var copy = new MemoryStream();
        Assert.Equal("image/jpeg", SharedCopy.Write(path, "told.jpg", PictureFile.Read(path, "told.jpg").Value, copy).Value);
        using var shared = Image.NewFromBuffer(copy.ToArray());
        Assert.Equal((100, 200), (shared.Width, shared.Height));
        Assert.DoesNotContain(shared.GetFields(), field => field.StartsWith("exif", StringComparison.Ordinal));
        Assert.DoesNotContain("SERIAL12345", System.Text.Encoding.Latin1.GetString(copy.ToArray()), StringComparison.Ordinal);
    }

    [Fact]
    public void A_name_with_options_in_brackets_is_only_a_name()
    {
        var path = Jpeg("a[shrink=8].jpg", 640, 480);
        Assert.Equal(640, PictureFile.Read(path, "a[shrink=8].jpg").Value.Width);
    }

    [Fact]
    public void Tiles_put_together_are_the_picture()
    {
        var path = Jpeg("board.jpg", 1000, 700);
        var header = PictureFile.Read(path, "board.jpg").Value;
        var tiles = TilePyramid.Make(path, "board.jpg", header, new string('a', 64), folder.Root, new Quiet()).Value;
        Assert.Equal((1000, 700, 10), (tiles.Width, tiles.Height, tiles.TopLevel));
        Assert.Equal((500, 350), tiles.Size(9));
        using var whole = Image.NewFromFile(path);
        for (var column = 0; column < 4; column++)
        {
            using var tile = Image.NewFromBuffer(tiles.Jpeg(10, column, 1).Value);
            var left = Math.Max(0, (column * 256) - 1);
            using var part = whole.Crop(left, 255, tile.Width, tile.Height);
            // Two more lossy savings of a smooth picture: a mean difference of a few steps.
            Assert.InRange((tile - part).Abs().Avg(), 0, 3);
        }

        Assert.True(tiles.Jpeg(0, 0, 0).Ok);
        Assert.Equal("There is no tile 4, 0 at level 10 of this picture.", tiles.Jpeg(10, 4, 0).Faults[0].Say);
        Assert.False(tiles.Jpeg(11, 0, 0).Ok);
        Assert.Single(Directory.EnumerateFiles(folder.Root, "*.tif", SearchOption.AllDirectories));
    }

    private static string Say<T>(Outcome<T> outcome) => Assert.Single(outcome.Faults).Say;

    private static Image Noise(int width, int height) => (Image.Gaussnoise(width, height, sigma: 20, mean: 128).Gaussblur(6) * 1.0).Bandjoin(90, 140).Cast(Enums.BandFormat.Uchar).Copy(interpretation: Enums.Interpretation.Srgb);

    private IReadOnlyList<string> Remarks(string name) => PictureFile.Read(folder.File(name), name).Value.Remarks;

    private string Jpeg(string name, int width, int height)
    {
        using var image = Noise(width, height);
        File.WriteAllBytes(folder.File(name), image.JpegsaveBuffer(q: 90));
        return folder.File(name);
    }

    private string Png(string name)
    {
        using var image = Noise(20, 20);
        image.Pngsave(folder.File(name));
        return folder.File(name);
    }

    private static uint Crc(ReadOnlySpan<byte> data)
    {
        var crc = 0xFFFFFFFFu;
        foreach (var value in data)
        {
            crc ^= value;
            for (var bit = 0; bit < 8; bit++) crc = (crc & 1) != 0 ? 0xEDB88320u ^ (crc >> 1) : crc >> 1;
        }

        return ~crc;
    }

    private sealed class Quiet : IJobReport
    {
        public CancellationToken Stop => CancellationToken.None;

        public void Say(long done, long total, string words)
        {
        }
    }
}
