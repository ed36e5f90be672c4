using System.Globalization;
using System.Xml.Linq;
using CsCheck;
using Lidoff.Telling.Drawing.Labelling;
using Lidoff.TestSupport;
using NetVips;

namespace Lidoff.Telling.Tests.Drawing.Labelling;

public sealed class LabelledPictureTests : IDisposable
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData(300, 200)]
    [InlineData(1600, 1200)]
    [InlineData(100, 2000)]
    [InlineData(1, 1)]
    public void Svg_and_png_show_one_drawing_of_one_size(int width, int height)
    {
        var labelled = Label(Board(width, height), Grid(width, height, 12), new(width / 40.0, 0.02));
        using var png = Image.NewFromBuffer(labelled.Png());
        var svg = XElement.Parse(labelled.Svg());
        Assert.Equal((labelled.Width, labelled.Height), (png.Width, png.Height));
        Assert.Equal((labelled.Width, labelled.Height), ((int)svg.Attribute("width")!, (int)svg.Attribute("height")!));
        Assert.Empty(labelled.Remarks);
        Assert.Equal("Main board with 12 labels on leader lines and a scale bar of 10 mm", labelled.Alternative);
        // Every coordinate that a path names lies on the sheet.
        foreach (var path in svg.Elements(Svg + "path")) Assert.All(Points((string)path.Attribute("d")!), point => Assert.True(point.X >= 0 && point.X <= labelled.Width && point.Y >= 0 && point.Y <= labelled.Height));
    }

    [Fact]
    public void The_same_input_gives_the_same_bytes()
    {
        var path = Board(640, 480);
        var (one, other) = (Label(path, Grid(640, 480, 9), new(12, 0)), Label(path, Grid(640, 480, 9), new(12, 0)));
        Assert.Equal(one.Svg(), other.Svg());
        Assert.Equal(one.Png(), other.Png());
    }

    [Fact]
    public void The_png_shows_what_a_drawer_of_svg_from_elsewhere_shows()
    {
        // Outside: librsvg, which the picture library carries, draws our SVG; our own pen draws the PNG.
        var labelled = Label(Board(900, 600), Grid(900, 600, 14), new(20, 0.03));
        using var ours = Image.NewFromBuffer(labelled.Png());
        NetVips.NetVips.BlockUntrusted = false;
        try
        {
            using var drawn = Image.SvgloadBuffer(System.Text.Encoding.UTF8.GetBytes(labelled.Svg()));
            using var theirs = drawn.HasAlpha() ? drawn.Flatten() : drawn.Copy();
            using var difference = (ours - theirs).Abs();
            // Edges are smoothed differently, and the picture inside is decoded twice; a stroke out of place would cost far more.
            Assert.InRange(difference.Avg(), 0, 1.5);
            using var narrow = difference.Gaussblur(3);
            Assert.InRange(narrow.Max(), 0, 60);
        }
        finally
        {
            NetVips.NetVips.BlockUntrusted = true;
        }
    }

    [Fact]
    public void The_bar_is_as_long_as_the_scale_says()
    {
        // 37 px to the mm in a picture 800 px wide: 0.35 of the width is 7.57 mm, so the bar is 5 mm, 185 px.
        var svg = XElement.Parse(Label(Board(800, 600), [], new(37, 0.004)).Svg());
        Assert.Contains(svg.Elements(Svg + "rect"), rect => (string)rect.Attribute("width")! == "185");
    }

    // Preferred steps 1, 2, 5 as instruments have them (common practice, no source); the widest gap is from 2 to 5, so a bar fills 0.4 at least.
    [Fact]
    public void Round_lengths_are_one_two_or_five_and_fill_a_good_part() => Gen.Double[-9, 9].Sample(
        exponent =>
        {
            var most = Math.Pow(10, exponent);
            var length = BarLength.Of(most);
            var mantissa = length.ToString("E0", CultureInfo.InvariantCulture)[0];
            Assert.True(length <= most && length >= 0.39 * most && mantissa is '1' or '2' or '5');
        },
        iter: 300);

    [Theory]
    [InlineData(0.05, "50 µm")]
    [InlineData(1, "1 mm")]
    [InlineData(20, "20 mm")]
    [InlineData(0.5, "500 µm")]
    [InlineData(500, "500 mm")]
    [InlineData(1000, "1 m")]
    [InlineData(2000, "2 m")]
    public void Lengths_are_said_in_their_unit(double mm, string said) => Assert.Equal(said, BarLength.Words(mm));

    [Fact]
    public void A_spot_outside_and_a_scale_that_is_none_are_said()
    {
        var labelled = Label(Board(400, 300), [new("U9", new(401, 12.5))], new(double.NaN, 0));
        Assert.Equal(["“U9” points at 401, 12.5, outside the picture of 400 × 300 px; it is not drawn.", "The picture's scale is not a usable number, so it has no scale bar."], labelled.Remarks);
        Assert.Contains("no scale known", labelled.Svg(), StringComparison.Ordinal);
    }

    // One per cent is what the eye tells along a bar: the line is ours.
    [Theory]
    [InlineData(0.01, "")]
    [InlineData(0.011, "scale known to ± 1.1 %")]
    [InlineData(0.025, "scale known to ± 2.5 %")]
    [InlineData(0.094, "scale known to ± 9.4 %")]
    [InlineData(0.126, "scale known to ± 13 %")]
    public void A_doubtful_scale_says_so_beside_its_bar(double u, string said)
    {
        var (svg, sure) = (XElement.Parse(Label(Board(800, 600), [], new(37, u)).Svg()), XElement.Parse(Label(Board(800, 600), [], new(37, 0)).Svg()));
        Assert.Equal(said.Length > 0 ? [said] : [], svg.Element(Svg + "desc")!.Value.Split('\n').Where(line => line.StartsWith("scale known", StringComparison.Ordinal)));
        // Words are drawn as strokes: beside the bar stands one thing more in the colour of doubt.
        Assert.Equal(Amber(sure) + (said.Length > 0 ? 1 : 0), Amber(svg));

        static int Amber(XElement drawn) => drawn.Elements(Svg + "path").Count(path => (string?)path.Attribute("stroke") == "#F0B35E");
    }

    [Fact]
    public void Hostile_words_stay_words()
    {
        var hostile = "<script>alert(1)</script>\u202Egnp\0\uFFFE\uD800 ../../x " + new string('W', 10_000) + " 漢字";
        var spots = new List<PictureSpot> { new(hostile, new(100, 100), hostile), new("漢字", new(300, 200), "日本"), new("", new(5, 5)) };
        var labelled = Of(Board(400, 300), spots, null, new(hostile, hostile, hostile, hostile));
        var svg = XElement.Parse(labelled.Svg());
        Assert.DoesNotContain(svg.Descendants(), element => element.Name.LocalName is "script");
        Assert.Contains(svg.Elements(Svg + "text"), text => text.Value == "漢字");
        Assert.Contains("[U+202E]", svg.Element(Svg + "desc")!.Value, StringComparison.Ordinal);
        Assert.InRange(labelled.Width, 400, 1200);
        Assert.InRange(labelled.Height, 300, 900);
        using var png = Image.NewFromBuffer(labelled.Png());
        Assert.Equal(labelled.Width, png.Width);
    }

    [Fact]
    public void Nothing_of_the_camera_goes_along()
    {
        var path = folder.Path + "/gps.jpg";
        using (var image = Plain(300, 200))
        {
            using var tagged = image.Mutate(mutable =>
            {
                mutable.Set(GValue.GStrType, "exif-ifd0-Make", "Seacrow Works (Seacrow Works, ASCII, 14 components, 14 bytes)");
                mutable.Set(GValue.GStrType, "exif-ifd3-GPSLatitude", "51/1 2/1 3/1 (51, 2, 3, Rational, 3 components, 24 bytes)");
            });
            tagged.Jpegsave(path);
        }

        Assert.Contains("Seacrow", System.Text.Encoding.Latin1.GetString(File.ReadAllBytes(path)), StringComparison.Ordinal);
        var labelled = Label(path, [new("U1", new(10, 10))], null);
        var inside = ((string)XElement.Parse(labelled.Svg()).Element(Svg + "image")!.Attribute("href")!)["data:image/jpeg;base64,".Length..];
        foreach (var bytes in new[] { Convert.FromBase64String(inside), labelled.Png() })
        {
            var text = System.Text.Encoding.Latin1.GetString(bytes);
            Assert.DoesNotContain("Exif", text, StringComparison.Ordinal);
            Assert.DoesNotContain("Seacrow", text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_picture_that_breaks_off_is_refused_in_one_sentence()
    {
        var path = Board(640, 480);
        var bytes = File.ReadAllBytes(path);
        File.WriteAllBytes(path, bytes[..(bytes.Length / 2)]);
        Assert.Equal("“board.jpg” is a JPEG picture whose pixels cannot be read to the end: cut off or damaged. Copy it again from where it came.", Assert.Single(LabelledPicture.Of(path, "board.jpg", [], null, new()).Faults).Say);
        File.WriteAllText(path, "no picture");
        Assert.StartsWith("“board.jpg” is", Assert.Single(LabelledPicture.Of(path, "board.jpg", [], null, new()).Faults).Say, StringComparison.Ordinal);
    }

    [Fact]
    public void A_picture_of_48_megapixels_is_reduced_in_bounded_memory()
    {
        var path = folder.Path + "/large.jpg";
        using (var image = Image.Black(8000, 6000, bands: 3).Copy(interpretation: Enums.Interpretation.Srgb)) image.Jpegsave(path);
        var labelled = Label(path, [new("U1", new(8000, 6000), "corner")], new(100, 0.05));
        Assert.InRange(labelled.Width, 2400, 3200);
        Assert.InRange(labelled.Png().Length, 1, 20_000_000);
        // The library's most over all tests of this run; its own buffers alone, of the 600 MB that the whole program may take.
        Assert.InRange((double)Stats.MemHighwater, 0, 300e6);
    }

    private static LabelledPicture Label(string path, IReadOnlyList<PictureSpot> spots, BarScale? scale) => Of(path, spots, scale, new("Main board", "Made by the tests", "CC0", "Invented."));

    private static LabelledPicture Of(string path, IReadOnlyList<PictureSpot> spots, BarScale? scale, PictureWords words) => LabelledPicture.Of(path, Path.GetFileName(path), spots, scale, words).Value;

    private static List<PictureSpot> Grid(int width, int height, int count) =>
        [.. Enumerable.Range(0, count).Select(i => new PictureSpot("U" + (i + 1), new((i % 4 + 0.5) / 4 * width, ((i / 4) + 0.5) / 4 * height), i % 2 == 0 ? "a part with a role, gjpqy" : ""))];

    private static IEnumerable<(double X, double Y)> Points(string path) =>
        path.Split(['M', 'L'], StringSplitOptions.RemoveEmptyEntries).Select(point => point.Split(' ')).Select(point => (double.Parse(point[0], CultureInfo.InvariantCulture), double.Parse(point[1], CultureInfo.InvariantCulture)));

    private static Image Plain(int width, int height) => (Image.Black(width, height) + new double[] { 30, 110, 60 }).Cast(Enums.BandFormat.Uchar).Copy(interpretation: Enums.Interpretation.Srgb);

    private string Board(int width, int height)
    {
        var path = folder.Path + "/board.jpg";
        using var image = Plain(width, height);
        image.Jpegsave(path);
        return path;
    }
}
