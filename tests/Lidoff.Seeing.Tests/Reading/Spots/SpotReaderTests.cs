using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Pictures;
using Lidoff.Seeing.Reading.Finding;
using Lidoff.Seeing.Reading.Networks;
using Lidoff.Seeing.Reading.Spots;
using Lidoff.Seeing.Rendering;
using Lidoff.Seeing.Rendering.Invented;
using Lidoff.TestSupport;

namespace Lidoff.Seeing.Tests.Reading.Spots;

/// <summary>The networks that come with the program on rendered boards whose marks, bodies and places are known, and on a made-up package top of bench/marks.</summary>
public sealed class SpotReaderTests : IDisposable
{
    private readonly TempFolder folder = new();
    private readonly OnnxNetworks networks = new(OnnxNetworks.FolderOf(AppContext.BaseDirectory));

    public void Dispose()
    {
        networks.Dispose();
        folder.Dispose();
    }

    [Fact]
    public void A_click_is_enough_and_pictures_of_one_mark_are_read_as_one()
    {
        var (top, close) = (Shot("brindle-main-top.png"), Shot("brindle-u1.png"));
        var mark = Truth("brindle-main-top.png", "U1");
        Assert.Equal(3, mark.Count);
        SpotPicture[] both = [Pointed(top, "U1"), Outlined(close, "U1")];
        var reading = Read("U1", both);
        Assert.Equal(mark, reading.Lines.Select(line => line.Readings[0].Text));
        // Each once, the one that shows it larger first; the region is the body's, which is 243 px wide there.
        Assert.Equal([both[1].Sha256, both[0].Sha256], reading.Pictures);
        Assert.Empty(reading.Besides);
        Assert.InRange(reading.Region.Width, 240, 275);
        Assert.Equal(networks.Hashes, reading.Networks);
        // What is the same is read the same.
        Assert.Equal(reading, Read("U1", both));
        // Two pictures that agree are surer than either, and none counts twice: one picture given twice would be that sure of itself.
        var alone = both.Select(picture => Read("U1", [picture])).ToList();
        Assert.True(reading.P >= alone.Max(each => each.P));
        Assert.All(alone, each => Assert.Single(each.Pictures));
    }

    [Fact]
    public void Colour_bands_are_taken_where_there_is_no_text()
    {
        var part = new Bands.RenderedAxial(3, hard: false);
        using (var file = File.Create(folder["r3.png"])) PngFile.Write(file, Bands.RenderedAxial.Width, Bands.RenderedAxial.Height, part.Pixels, 1, "");
        var header = PictureFile.Read(folder["r3.png"], "r3.png").Value;
        var picture = new SpotPicture("cc", "r3.png", folder["r3.png"], header, null, new(10, 10, 240, 180), null, []);
        var reading = Read("R3", [picture]);
        Assert.Empty(reading.Lines);
        Assert.Equal(part.Ohms, reading.BandOdds(null)!.Readings[0].Reading.Si, 1e-6 * part.Ohms);
        Assert.InRange(reading.Region.Middle.DistanceTo(part.Body.Middle), 0, 5);
        Assert.Equal([$"No text was read; colour bands were seen: {reading.BandsWritten}."], reading.Says);
    }

    [Fact]
    public void Where_no_body_is_found_nothing_is_read_and_a_board_is_no_body()
    {
        var top = Shot("brindle-main-top.png");
        // A resistor of 22 × 11 px.
        Assert.Equal(
            "No body was found in “brindle-main-top.png” where R1 was pointed at, nor text under that place. Draw a box around the mark, outline the body by three of its corners, point at the mark itself, or take a picture from closer up.",
            Assert.Single(Weigh("R1", [Pointed(top, "R1")]).Faults).Say);
        // Bare solder resist between the parts: what hangs together around it is the board, on which U8 stands.
        var bottom = Shot("brindle-main-bottom.png");
        var board = Weigh("P2", [Pointed(bottom, "P2") with { Others = [Part(bottom, "U8").Centre] }]);
        Assert.Equal("What was found in “brindle-main-bottom.png” around P2 holds more than one part: it is a board and no body. Draw a box around the mark of P2, outline its body by three of its corners, or point at the mark itself.", Assert.Single(board.Faults).Say);
        // One picture that will do is enough, and the other is told.
        var reading = Read("U1", [Pointed(bottom, "R4"), Outlined(Shot("brindle-u1.png"), "U1")]);
        Assert.Equal(Truth("brindle-u1.png", "U1"), reading.Lines.Select(line => line.Readings[0].Text));
        Assert.Contains(reading.Says, says => says.StartsWith("No body was found in “brindle-main-bottom.png” where U1", StringComparison.Ordinal));
        Assert.Equal([Sha(bottom)], reading.Besides);
    }

    [Fact]
    public void Where_the_body_is_too_small_to_be_seen_the_text_under_the_click_is_read_and_no_neighbours()
    {
        // A body of 54 × 43 px is found, one of 63 × 35 px is not.
        var (top, bottom) = ("brindle-main-top.png", "brindle-main-bottom.png");
        var crystal = Read("X1", [Pointed(Shot(top), "X1")]);
        Assert.Equal(Truth(top, "X1"), crystal.Lines.Select(line => line.Readings[0].Text));
        Assert.Empty(crystal.Says);
        Assert.InRange(crystal.Region.Width, 51, 59);
        Assert.InRange(crystal.Region.Height, 40, 48);
        var pair = Read("Q1", [Pointed(Shot(bottom), "Q1")]);
        Assert.Equal(Truth(bottom, "Q1"), pair.Lines.Select(line => line.Readings[0].Text));
        Assert.Equal($"No body was found in “{bottom}”: the text that was pointed at was read.", Assert.Single(pair.Says));

        // A coil beside the lamp driver, whose mark is the nearest text.
        var lamp = Shot("brindle-lamp-top.png");
        Assert.False(Weigh("L2", [Pointed(lamp, "L2")]).Ok);
        Assert.False(Weigh("L2", [Pointed(lamp, "L2") with { Others = [Part(lamp, "U4").Centre] }]).Ok);
        // What another was pointed at on is the other's: X1's own text, were X9 pointed at there.
        Assert.False(Weigh("X1", [Pointed(Shot(top), "X1") with { Others = [Part(Shot(top), "X1").Centre] }]).Ok);
        // A designator printed beside a part is none of its mark.
        Assert.False(Weigh("8205A", [Pointed(Shot(bottom), "Q1")]).Ok);
    }

    [Fact]
    public void Two_marks_are_not_made_one_and_what_shows_none_is_told()
    {
        var (top, lamp) = (Shot("brindle-main-top.png"), Shot("brindle-lamp-top.png"));
        SpotPicture[] pictures = [Pointed(top, "U2"), Pointed(lamp, "U4"), Pointed(lamp, "S1") with { Sha256 = "of-its-own" }];
        var reading = Read("U2", pictures);
        Assert.Equal(Truth("brindle-main-top.png", "U2"), reading.Lines.Select(line => line.Readings[0].Text));
        Assert.Equal((1, 2), (reading.Pictures.Count, reading.Besides.Count));
        Assert.Equal(
            ["“brindle-lamp-top.png” was left out: it has no line of text in common with the others.", "“brindle-lamp-top.png” was left out: nothing could be read there."],
            reading.Says);
        var nothing = Read("S1", [Pointed(lamp, "S1")]);
        Assert.Null(nothing.Mark);
        Assert.StartsWith("No text was found here.", Assert.Single(nothing.Says), StringComparison.Ordinal);
    }

    [Fact]
    public void A_box_is_a_persons_word_and_the_body_in_it_is_found()
    {
        var top = Shot("brindle-main-top.png");
        var part = Part(top, "U2");
        var (x, y) = (part.Centre.X, part.Centre.Y);
        // Half as large again as the body of 116 px, and off its middle.
        var reading = Read("U2", [Bare(top) with { Box = new(x - 80, y - 84, 168, 170) }]);
        Assert.Equal(Truth("brindle-main-top.png", "U2"), reading.Lines.Select(line => line.Readings[0].Text));
        Assert.InRange(reading.Region.Width, 110, 125);
        // Around a part too small to be found, the box itself is read.
        var small = Read("U3", [Bare(top) with { Box = new(680, 390, 80, 45) }]);
        Assert.Equal((720.0, 412.5, 80.0, 45.0), (small.Region.Middle.X, small.Region.Middle.Y, small.Region.Width, small.Region.Height));
    }

    // 002 and 015 of bench/marks: one shows its body's edges, the other nothing but body.
    [Theory]
    [InlineData("002.jpg")]
    [InlineData("015.jpg")]
    public void A_picture_that_is_all_body_is_read_whole_unless_several_things_are_in_it(string name)
    {
        var path = Path.Combine(Root(), "bench", "marks", name);
        var header = PictureFile.Read(path, name).Value;
        var picture = new SpotPicture(name, name, path, header, null, null, new(header.Width / 2.0, header.Height / 2.0), []);
        Assert.NotEmpty(Read("U1", [picture]).Lines);
        Assert.Single(Weigh("U1", [picture with { Others = [new(header.Width / 2.0, header.Height / 2.0)] }]).Faults);
    }

    private Outcome<ReadingSighting> Weigh(string spot, IReadOnlyList<SpotPicture> pictures)
    {
        var reader = new SpotReader(networks);
        return reader.Weigh(spot, pictures, [.. pictures.Select(picture => reader.Scan(spot, picture))], [], "p");
    }

    private ReadingSighting Read(string spot, IReadOnlyList<SpotPicture> pictures) => Weigh(spot, pictures).Value;

    private static SpotPicture Pointed((Shot Of, string Path) shot, string spot) => Bare(shot) with { At = Part(shot, spot).Centre };

    private static SpotPicture Outlined((Shot Of, string Path) shot, string spot)
    {
        var part = Part(shot, spot);
        return Bare(shot) with { Outline = BodyOutline.Of(new("p", part.Left, part.Right, 0, 1), new("p", part.Top, part.Bottom, 0, 1)) };
    }

    private static SpotPicture Bare((Shot Of, string Path) shot) => new(Sha(shot), shot.Of.Name, shot.Path, PictureFile.Read(shot.Path, shot.Of.Name).Value, null, null, null, []);

    private static string Sha((Shot Of, string Path) shot) => "sha of " + shot.Of.Name;

    private static TruePart Part((Shot Of, string Path) shot, string spot) => shot.Of.Truth.Parts.Single(part => part.Part.Spot == spot);

    private static IReadOnlyList<string> Truth(string shot, string spot) => BrindleShots.Named(shot).Truth.Parts.Single(part => part.Part.Spot == spot).Part.Marks;

    private (Shot Of, string Path) Shot(string name)
    {
        var shot = BrindleShots.Named(name);
        if (!File.Exists(folder[name]))
        {
            using var file = File.Create(folder[name]);
            SceneRenderer.Render(shot.Scene).WritePng(file);
        }

        return (shot, folder[name]);
    }

    private static string Root()
    {
        var at = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(at, "Lidoff.slnx"))) at = Path.GetDirectoryName(at)!;
        return at;
    }
}
