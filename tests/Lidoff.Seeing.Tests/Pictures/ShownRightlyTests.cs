using System.Buffers.Binary;
using ImageMagick;
using Lidoff.Seeing.Pictures;
using NetVips;

namespace Lidoff.Seeing.Tests.Pictures;

/// <summary>Pictures of an unusual make, and pictures that say something wrong of themselves: what is shown is what is in them.</summary>
public sealed class ShownRightlyTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Print_colours_as_a_print_program_writes_them_are_not_shown_as_a_negative()
    {
        // The other library writes the four inks inverted, with Adobe's marker that says so, as print programs do (from memory of the marker's
        // note). No ink is white paper, all black ink is black; the tint of pure cyan depends on the profile, but there is no red in it.
        var path = folder.File("print.jpg");
        using (var inks = new MagickImageCollection())
        {
            foreach (var colour in new[] { "cmyk(0,0,0,0)", "cmyk(0,0,0,255)", "cmyk(255,0,0,0)" }) inks.Add(new MagickImage(new MagickColor(colour), 64, 64));
            using var row = inks.AppendHorizontally();
            row.ColorSpace = ColorSpace.CMYK;
            row.Quality = 95;
            row.Write(path, MagickFormat.Jpeg);
        }

        var header = PictureFile.Read(path, "print.jpg").Value;
        Assert.Equal(PictureColour.Cmyk, header.Colour);
        Assert.Equal(["The picture is in print colours (CMYK); they are converted for the screen and kept as they are."], header.Remarks);
        using var shown = Shown(path, 192);
        Assert.All(shown.Getpoint(32, 32), value => Assert.InRange(value, 240, 255));
        Assert.All(shown.Getpoint(96, 32), value => Assert.InRange(value, 0, 60));
        var cyan = shown.Getpoint(160, 32);
        Assert.InRange(cyan[0], 0, 60);
        Assert.True(cyan[1] > 110 && cyan[2] > 170, string.Join(' ', cyan));
    }

    [Theory]
    [InlineData("grey.png", 1)]
    [InlineData("colour.png", 3)]
    [InlineData("grey.tif", 1)]
    [InlineData("colour.tif", 3)]
    public void Sixteen_bits_are_scaled_and_not_cut_off(string name, int bands)
    {
        // A quarter, a half and all of the range of 16 bits: 64, 128 and 255 of 8 bits.
        using (var thirds = new[] { 16_384.0, 32_768, 65_535 }.Select(value => Image.Black(40, 40, bands) + value).Aggregate((left, right) => left.Join(right, Enums.Direction.Horizontal)))
        using (var deep = thirds.Cast(Enums.BandFormat.Ushort).Copy(interpretation: bands == 1 ? Enums.Interpretation.Grey16 : Enums.Interpretation.Rgb16))
        {
            if (name.EndsWith(".png", StringComparison.Ordinal)) deep.Pngsave(folder.File(name));
            else deep.Tiffsave(folder.File(name));
        }

        Assert.Equal(["The picture has 16 bits a channel; it is shown with 8 and kept as it is."], PictureFile.Read(folder.File(name), name).Value.Remarks);
        using var shown = Shown(folder.File(name), 120);
        foreach (var (x, value) in new[] { (20, 64), (60, 128), (100, 255) }) Assert.All(shown.Getpoint(x, 20), seen => Assert.InRange(seen, value - 2, value + 2));
    }

    [Theory]
    [InlineData("moving.gif")]
    [InlineData("moving.webp")]
    public void Of_moving_pictures_the_first_frame_is_shown(string name)
    {
        using (var red = Plain(60, 40, 220, 30, 30))
        using (var blue = Plain(60, 40, 30, 30, 220))
        using (var both = red.Join(blue, Enums.Direction.Vertical).Mutate(image => image.Set(GValue.GIntType, "page-height", 40)))
        {
            if (name.EndsWith(".gif", StringComparison.Ordinal)) both.Gifsave(folder.File(name));
            else both.Webpsave(folder.File(name));
        }

        var header = PictureFile.Read(folder.File(name), name).Value;
        Assert.Equal((60, 40, 2), (header.Width, header.Height, header.Pages));
        Assert.Equal(["The file holds 2 frames; the first is used."], header.Remarks);
        using var shown = Shown(folder.File(name), 60);
        Assert.Equal((60, 40), (shown.Width, shown.Height));
        var seen = shown.Getpoint(30, 20);
        Assert.True(seen[0] > 180 && seen[2] < 80, string.Join(' ', seen));
    }

    [Fact]
    public void An_embedded_thumbnail_of_another_picture_is_never_shown()
    {
        var path = folder.File("lies.jpg");
        using (var blue = Plain(160, 120, 30, 30, 220))
        using (var red = Plain(640, 480, 220, 30, 30))
        using (var lying = red.Mutate(image =>
        {
            image.Set(GValue.GIntType, "orientation", 1);
            image.Set(GValue.BlobType, "jpeg-thumbnail-data", blue.JpegsaveBuffer(keep: Enums.ForeignKeep.None));
        }))
        {
            lying.Jpegsave(path);
        }

        // It is in there: a second start of image before the picture's own frame.
        var bytes = File.ReadAllBytes(path);
        Assert.True(bytes.AsSpan(2).IndexOf([(byte)0xFF, (byte)0xD8, (byte)0xFF]) > 0);
        foreach (var side in new[] { 40, 160, 320 })
        {
            using var shown = Shown(path, side);
            var seen = shown.Getpoint(shown.Width / 2, shown.Height / 2);
            Assert.True(seen[0] > 180 && seen[2] < 80, string.Join(' ', seen));
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(9)]
    [InlineData(4711)]
    public void An_orientation_that_does_not_exist_is_said_and_the_picture_is_shown_as_stored(int tag)
    {
        var path = folder.File("turned.jpg");
        using (var plain = Plain(200, 100, 90, 120, 150).Mutate(image => image.Set(GValue.GIntType, "orientation", 6))) plain.Jpegsave(path);
        // Exif 2.32: tag 0x0112, a short (3), one of it, then its value; little endian as the library writes it.
        var bytes = File.ReadAllBytes(path);
        var at = bytes.AsSpan().IndexOf([(byte)0x12, (byte)0x01, (byte)0x03, (byte)0x00, (byte)0x01, (byte)0x00, (byte)0x00, (byte)0x00]);
        Assert.Equal(6, BinaryPrimitives.ReadUInt16LittleEndian(bytes.AsSpan(at + 8)));
        BinaryPrimitives.WriteUInt16LittleEndian(bytes.AsSpan(at + 8), (ushort)tag);
        File.WriteAllBytes(path, bytes);
        var header = PictureFile.Read(path, "turned.jpg").Value;
        Assert.Equal((200, 100, 1), (header.Width, header.Height, header.Orientation));
        Assert.Equal([$"The picture's orientation tag is {tag}, which does not exist (1 to 8 do); it is shown as stored."], header.Remarks);
        using var shown = Shown(path, 100);
        Assert.Equal((100, 50), (shown.Width, shown.Height));
    }

    [Fact]
    public void What_is_see_through_is_shown_on_white()
    {
        using (var half = Plain(60, 40, 200, 0, 0).Bandjoin([0.0]).Cast(Enums.BandFormat.Uchar).Copy(interpretation: Enums.Interpretation.Srgb)) half.Pngsave(folder.File("glass.png"));
        using var shown = Shown(folder.File("glass.png"), 60);
        Assert.All(shown.Getpoint(30, 20), value => Assert.InRange(value, 250, 255));
    }

    private static Image Shown(string path, int side) => Image.NewFromBuffer(Thumbnail.Jpeg(path, "a picture", PictureFile.Read(path, "a picture").Value, side).Value);

    private static Image Plain(int width, int height, double red, double green, double blue) =>
        (Image.Black(width, height, 3) + new[] { red, green, blue }).Cast(Enums.BandFormat.Uchar).Copy(interpretation: Enums.Interpretation.Srgb);
}
