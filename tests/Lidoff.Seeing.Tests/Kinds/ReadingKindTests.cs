using System.Text;
using System.Text.Json;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Reading.Engine;
using Lidoff.Seeing.Reading.Finding;
using Lidoff.Seeing.Tests.Reading.Engine;
using Lidoff.TestSupport;

namespace Lidoff.Seeing.Tests.Kinds;

public sealed class ReadingKindTests
{
    private const string Rest = """ "region":[50,40,100,80,0],"turn_deg":180,"networks":["aa","bb"],"settings":"s","program":"p" """;

    private const string Good =
        """{"spot":"U3","pictures":["cc"],"lines":[[[["N",0.98],["H",0.01]],[["8",0.4],["B",0.35]],[["",0.9],["5",0.1]]]],"readings":[[["N8",0.4],["NB",0.35]]],"outlines":[[90,50],[10,50],[10,30],[90,30]],"dot":[12,8],"says":["x"],""" + Rest + "}";

    [Fact]
    public void A_line_reads_in_full_and_is_a_mark_to_whoever_weighs_it()
    {
        var read = KindLines.Read(new ReadingKind(), Good);
        Assert.Equal(("U3", 180.0, 0.4), (read.Spot, read.TurnDeg, read.Lines[0].P));
        Assert.Equal(new PictureRegion(new(50, 40), 100, 80, 0), read.Region);
        // A place below one half stays open, one that is most likely empty is none.
        Assert.Equal(("N?", "N8|B5|_"), (read.Mark!.Text, read.Mark.Written.Replace("_|5", "5|_", StringComparison.Ordinal)));
        Assert.Equal((90, 50), (read.Lines[0].Outline[0].X, read.Lines[0].Outline[0].Y));
        Assert.Equal(12, read.Dot!.Value.X);
        Assert.Equal(read, KindLines.Read(new ReadingKind(), Good));
        Assert.Empty(KindLines.Complaints(new ReadingKind(), Good));
    }

    [Fact]
    public void Pictures_that_are_no_part_of_it_are_named_and_all_of_it_is_right_by_the_product_of_its_lines()
    {
        var read = KindLines.Read(new ReadingKind(), """{"spot":"U3","pictures":["cc"],"besides":["dd","ee"],"lines":[[[["N",1]]],[[["8",1]]]],"readings":[[["N",0.9]],[["8",0.5],["B",0.5]]],""" + Rest + "}");
        Assert.Equal(["dd", "ee"], read.Besides);
        Assert.Equal(0.45, read.P, 12);
        Assert.StartsWith("\"besides\" should be a list of 0 to 8 texts", Assert.Single(KindLines.Say(new ReadingKind(), """{"spot":"U3","pictures":["cc"],"besides":["1","2","3","4","5","6","7","8","9"],"lines":[],"readings":[],""" + Rest + "}")), StringComparison.Ordinal);
    }

    [Fact]
    public void Each_picture_keeps_its_own_outlines_and_a_line_without_them_reads_as_before()
    {
        const string Two = """{"spot":"U3","pictures":["cc","dd"],"lines":[[[["N",1]]],[[["8",1]]]],"readings":[[["N",0.9]],[["8",0.5]]],"outlines":[[9,5],[1,5],[1,3],[9,3],[9,9],[1,9],[1,7],[9,7]],"in_picture":[0,1],"also":[[[1,90,50,10,50,10,30,90,30]],[]],""" + Rest + "}";
        var read = KindLines.Read(new ReadingKind(), Two);
        Assert.Equal((9, 90, 0, 9), (read.Lines[0].OutlineIn(0)[0].X, read.Lines[0].OutlineIn(1)[0].X, read.Lines[1].OutlineIn(0).Count, read.Lines[1].OutlineIn(1)[0].X));
        Assert.Empty(KindLines.Read(new ReadingKind(), Good).Lines[0].Also);
        foreach (var wrong in new[] { "[[[2,1,2,3,4,5,6,7,8]],[]]", "[[[1,1,2]],[]]", "[[]]", "7" })
        {
            Assert.Equal(["\"also\" should be for each line a list of [picture, x, y of four corners], with pictures from 0."], KindLines.Say(new ReadingKind(), Two.Replace("[[[1,90,50,10,50,10,30,90,30]],[]]", wrong, StringComparison.Ordinal)));
        }
    }

    [Fact]
    public void Dot_and_emblems_read_back_with_how_sure_they_are()
    {
        const string Line = """{"spot":"U3","pictures":["cc"],"lines":[],"readings":[],"dot":[95,75],"dot_p":0.9,"emblems":[[10,10],[30,10],[30,20],[10,20]],"emblems_p":[0.8],""" + Rest + "}";
        var read = KindLines.Read(new ReadingKind(), Line);
        // The body is 100 × 80 px around (50, 40) and the mark stands on its head: its lower right corner is the upper left one of the upright mark.
        Assert.Equal((0.9, "upper left"), (read.DotP, read.PinOne!.Corner));
        var emblem = Assert.Single(read.Emblems);
        Assert.Equal((0.8, new PictureRegion(new(20, 15), 24, 14, -Math.PI)), (emblem.P, emblem.Piece(180) is var piece ? piece with { Middle = new(Math.Round(piece.Middle.X, 9), Math.Round(piece.Middle.Y, 9)), Width = Math.Round(piece.Width, 9), Height = Math.Round(piece.Height, 9) } : default));
        Assert.Equal(["\"emblems\" should be four corners for each, and a share in \"emblems_p\"."], KindLines.Say(new ReadingKind(), Line.Replace("[0.8]", "[0.8,0.7]", StringComparison.Ordinal)));
        Assert.Equal(["\"emblems\" should be four corners for each, and a share in \"emblems_p\"."], KindLines.Say(new ReadingKind(), Line.Replace("[0.8]", "[1.8]", StringComparison.Ordinal)));
    }

    // Brown black red gold is 1 kΩ ± 5 %: a worked example of a public chart of IEC 60062.
    [Fact]
    public void Colour_bands_read_back_and_say_their_value()
    {
        const string Line = """{"spot":"R3","pictures":["cc"],"lines":[],"readings":[],"bands":[[["brown",0.9],["red",0.1]],[["black",1]],[["red",1]],[["gold",0.8],["yellow",0.2]]],"bands_begin":2.5,""" + Rest + "}";
        var read = KindLines.Read(new ReadingKind(), Line);
        Assert.Equal(("brown black red gold", 2.5, (MarkSighting?)null), (read.BandsWritten, read.BandsBegin, read.Mark));
        Assert.Equal((1e3, 0.9), (read.BandOdds(null)!.Readings[0].Reading.Si, read.Bands[0].Shares[Numbers.Typed.Codes.Bands.BandColour.Brown]));
        Assert.Equal(read, KindLines.Read(new ReadingKind(), Line));
        foreach (var wrong in new[] { "7", "[]", "[[]]", "[[[\"brown\",2]]]", "[[[\"purpel\",1]]]", "[[[\"red\",0.5],[\"red\",0.5]]]", "[[[\"red\",0.8],[\"gold\",0.8]]]" })
        {
            var line = """{"spot":"R3","pictures":["cc"],"lines":[],"readings":[],"bands":WRONG,""" + Rest + "}";
            Assert.Equal(["\"bands\" should be one to six bands, each a list of [colour, probability], together one at most."], KindLines.Say(new ReadingKind(), line.Replace("WRONG", wrong, StringComparison.Ordinal)));
        }
    }

    [Fact]
    public void Nothing_read_is_a_reading_too() =>
        Assert.Null(KindLines.Read(new ReadingKind(), """{"spot":"U3","pictures":["cc"],"lines":[],"readings":[],""" + Rest + "}").Mark);

    [Fact]
    public void What_the_engine_read_is_stored_rounded_and_reads_back_the_same()
    {
        var networks = new DrawnNetworks((new PictureRegion(new(200, 100), 240, 46, 0), "N52832")) { Dot = new(40, 40), Emblem = (new(330, 160), 30), Doubts = new Dictionary<int, (char, double)> { [3] = ('B', 0.312345) } };
        var reader = new MarkReader(networks);
        var (region, picture) = (new PictureRegion(new(200, 100), 400, 200, 0), networks.Paint(400, 200));
        var seen = ReadingSighting.Of("U1", ["cc"], region, reader.Weigh(reader.Scan(picture, region)), networks, "lidoff 0.1");
        Assert.Equal("N52832", seen.Mark!.Text);
        Assert.Equal(0.3123, seen.Lines[0].Line.Places[3].Top[1].P, 3);
        Assert.All(seen.Lines[0].Line.Places.SelectMany(place => place.Top), glyph => Assert.Equal(Math.Round(glyph.P, 4), glyph.P));
        Assert.All(seen.Lines[0].Outline, corner => Assert.Equal((Math.Round(corner.X, 1), Math.Round(corner.Y, 1)), (corner.X, corner.Y)));
        Assert.Equal(["N52832", "N52B32"], seen.Lines[0].Readings.Take(2).Select(each => each.Text));
        Assert.Equal(networks.Hashes, seen.Networks);
        Assert.Single(seen.Emblems);
        Assert.NotNull(seen.DotP);
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream))
        {
            json.WriteStartObject();
            ReadingKind.WriteKeys(json, seen);
            json.WriteEndObject();
        }

        var text = Encoding.UTF8.GetString(stream.ToArray());
        Assert.Equal(seen, KindLines.Read(new ReadingKind(), text));
        // The same picture read again gives the same entry.
        Assert.Equal(seen, ReadingSighting.Of("U1", ["cc"], region, reader.Weigh(reader.Scan(picture, region)), networks, "lidoff 0.1"));
    }

    [Theory]
    [InlineData("""{"spot":"U3","pictures":["cc"],"lines":["N52832"],"readings":[[["N",1]]],""" + Rest + "}", "\"lines\" should be lists of places; what a person types is a mark.")]
    [InlineData("""{"spot":"U3","pictures":["cc"],"lines":[[[["N",1]]]],"readings":[],""" + Rest + "}", "\"readings\" should be for each line its whole readings, each [text, probability].")]
    [InlineData("""{"spot":"U3","pictures":["cc"],"lines":[[[["N",1]]]],"readings":[[["N",2]]],""" + Rest + "}", "\"readings\" should be for each line its whole readings, each [text, probability].")]
    [InlineData("""{"spot":"U3","pictures":["cc"],"lines":[[[["N",1]]]],"readings":[[["N",1]]],"outlines":[[1,2],[3,4]],""" + Rest + "}", "\"outlines\" should be four corners for each line, or none.")]
    [InlineData("""{"spot":"U3","pictures":["cc"],"lines":[[[["N",1]]]],"readings":[[["N",1]]],"in_picture":[0,0],""" + Rest + "}", "\"in_picture\" should be one for each line, or none.")]
    public void A_bad_line_says_what_is_wrong(string line, string expected) => Assert.Equal([expected], KindLines.Say(new ReadingKind(), line));
}
