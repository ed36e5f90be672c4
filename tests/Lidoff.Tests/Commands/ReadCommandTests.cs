using System.Text.Json;
using Lidoff.Seeing.Reading.Lattices;
using Lidoff.TestSupport;

namespace Lidoff.Tests.Commands;

/// <summary>read, called like a user, on painted bars and with networks of a few nodes that take each bright bar for an A.</summary>
public sealed class ReadCommandTests : IDisposable
{
    private readonly TempFolder folder = new();

    public ReadCommandTests() => PaintedBars.Networks(folder["models"]);

    public void Dispose() => folder.Dispose();

    private async Task<(int Code, RecordedTalk Talk)> Run(params string[] arguments)
    {
        var talk = new RecordedTalk();
        var seat = Seats.Of(talk, folder.Path) with { ProgramFolder = folder.Path };
        return (await LidoffProgram.Run(arguments, seat, TestContext.Current.CancellationToken), talk);
    }

    [Fact]
    public async Task A_mark_comes_as_the_contract_lays_it_down()
    {
        PaintedBars.Paint(folder["chip.png"], 384, 160, 90, 60, 3);
        var (code, talk) = await Run("read", "chip.png", "--json");
        Assert.Equal(ExitCodes.Done, code);
        Assert.Empty(talk.Said);
        var read = CommandRun.Only(talk);
        Assert.Equal(["format", "image", "turn_deg", "lines"], CommandRun.Keys(read));
        Assert.Equal((1, "chip.png", 0.0), (read.GetProperty("format").GetInt32(), read.GetProperty("image").GetString(), read.GetProperty("turn_deg").GetDouble()));
        var line = Assert.Single(read.GetProperty("lines").EnumerateArray());
        Assert.Equal(["text", "p", "outline", "readings", "glyphs"], CommandRun.Keys(line));
        Assert.Equal("AAA", line.GetProperty("text").GetString());
        Assert.InRange(line.GetProperty("p").GetDouble(), 0.9, 1);
        // Clockwise from the top left: bars from (90, 60) to (294, 100).
        (double X, double Y)[] truth = [(90, 60), (294, 60), (294, 100), (90, 100)];
        Near(truth, line.GetProperty("outline"));
        var readings = line.GetProperty("readings").EnumerateArray().ToList();
        Assert.InRange(readings.Count, 1, 5);
        Assert.Equal(("AAA", line.GetProperty("p").GetDouble()), (readings[0][0].GetString(), readings[0][1].GetDouble()));
        Assert.InRange(readings.Sum(each => each[1].GetDouble()), 0.9, 1.001);
        var glyphs = line.GetProperty("glyphs").EnumerateArray().ToList();
        Assert.Equal(3, glyphs.Count);
        for (var i = 0; i < 3; i++)
        {
            Assert.Equal(["at", "top", "rest"], CommandRun.Keys(glyphs[i]));
            Assert.Equal(120 + (72 * i), glyphs[i].GetProperty("at")[0].GetDouble(), 20.0);
            Assert.Equal(80, glyphs[i].GetProperty("at")[1].GetDouble(), 3.0);
            var top = glyphs[i].GetProperty("top").EnumerateArray().ToList();
            Assert.Equal("A", top[0][0].GetString());
            Assert.Equal(1, top.Sum(each => each[1].GetDouble()) + glyphs[i].GetProperty("rest").GetDouble(), 0.002);
        }

        // The same input, the same bytes.
        Assert.Equal(talk.Out, (await Run("read", "chip.png", "--json")).Talk.Out);
    }

    [Fact]
    public async Task A_box_leaves_outlines_in_the_picture_as_it_lies_and_people_get_a_line()
    {
        PaintedBars.Paint(folder["board.png"], 900, 700, 500, 400, 2);
        var (code, talk) = await Run("read", "board.png", "--box", "430,360,300,120", "--upright", "--json");
        Assert.Equal(ExitCodes.Done, code);
        var line = Assert.Single(CommandRun.Only(talk).GetProperty("lines").EnumerateArray());
        Assert.Equal("AA", line.GetProperty("text").GetString());
        Near([(500, 400), (632, 400), (632, 440), (500, 440)], line.GetProperty("outline"));
        // People get odds that are never 100 %.
        Assert.Equal("AA  over 99 %", Assert.Single((await Run("read", "board.png", "--box", "430,360,300,120")).Talk.Out));
    }

    // Yellow violet red gold on beige: 4.7 kΩ ± 5 %, a worked example of a public chart of IEC 60062.
    [Fact]
    public async Task Colour_bands_are_read_where_they_are_asked_for()
    {
        (byte R, byte G, byte B)[] inks = [(238, 205, 48), (108, 60, 136), (188, 34, 38), (178, 140, 66)];
        int[] starts = [42, 70, 98, 150];
        var pixels = new byte[240 * 90 * 3];
        for (var i = 0; i < 240 * 90; i++)
        {
            var (x, y) = (i % 240, i / 240);
            var band = x is >= 30 and < 190 && y is >= 20 and < 70 ? Array.FindIndex(starts, start => x - 15 >= start && x - 15 < start + 12) : -2;
            (pixels[3 * i], pixels[(3 * i) + 1], pixels[(3 * i) + 2]) = band switch { -2 => ((byte)240, (byte)240, (byte)240), -1 => ((byte)210, (byte)182, (byte)138), _ => inks[band] };
        }

        using (var image = NetVips.Image.NewFromMemory(pixels, 240, 90, 3, NetVips.Enums.BandFormat.Uchar)) File.WriteAllBytes(folder["part.png"], image.PngsaveBuffer());
        var (code, talk) = await Run("read", "part.png", "--bands", "--json");
        Assert.Equal(ExitCodes.Done, code);
        var read = CommandRun.Only(talk);
        Assert.Equal(["format", "image", "body", "bands", "readings", "none_p"], CommandRun.Keys(read));
        Assert.Equal(["yellow", "violet", "red", "gold"], read.GetProperty("bands").EnumerateArray().Select(band => band.GetProperty("top")[0][0].GetString()));
        Assert.Equal((4700, 5), (read.GetProperty("readings")[0].GetProperty("value").GetDouble(), read.GetProperty("readings")[0].GetProperty("tolerances")[0].GetProperty("above").GetDouble()));
        Assert.StartsWith("  yellow violet red gold: 4.7 kΩ ± 5 % (4 bands, IEC 60062), ", (await Run("read", "part.png", "--bands")).Talk.Out[1], StringComparison.Ordinal);
        // A part with no bands, and options that do not go together.
        PaintedBars.Paint(folder["grey.png"], 384, 160, 90, 60, 3);
        Assert.Equal("grey.png has no colours: bands cannot be told apart in it.", Assert.Single((await Run("read", "grey.png", "--bands")).Talk.Said));
        Assert.Equal(ExitCodes.Usage, (await Run("read", "part.png", "--bands", "--upright")).Code);
    }

    [Fact]
    public async Task Parts_of_a_board_come_as_the_contract_lays_it_down_and_people_get_a_line_each()
    {
        // Three bars make a mark of three letters; a single one is none.
        PaintedBars.Paint(folder["board.png"], 700, 500, 300, 300, 3);
        var (code, talk) = await Run("read", "board.png", "--parts", "--json");
        Assert.Equal(ExitCodes.Done, code);
        var read = CommandRun.Only(talk);
        Assert.Equal(["format", "image", "parts"], CommandRun.Keys(read));
        var part = Assert.Single(read.GetProperty("parts").EnumerateArray());
        Assert.Equal(["region", "body", "turn_deg", "lines"], CommandRun.Keys(part));
        Assert.False(part.GetProperty("body").GetBoolean());
        Assert.Equal("AAA", Assert.Single(part.GetProperty("lines").EnumerateArray()).GetProperty("text").GetString());
        // Bars from (300, 300) to (504, 340).
        Assert.Equal((402, 320), (part.GetProperty("region")[0].GetDouble(), part.GetProperty("region")[1].GetDouble()) is var (x, y) ? (Math.Round(x / 3) * 3, Math.Round(y / 4) * 4) : default);
        Assert.Matches("^text without a body at 40[0-4], 3(19|20|21) ", (await Run("read", "board.png", "--parts")).Talk.Out[0]);
        PaintedBars.Paint(folder["bare.png"], 700, 500, 300, 300, 0);
        Assert.StartsWith("bare.png: No mark was found that can be read.", Assert.Single((await Run("read", "bare.png", "--parts")).Talk.Said), StringComparison.Ordinal);
        Assert.Equal("--parts looks through whole pictures at any turn; --box and --upright read one mark.", (await Run("read", "board.png", "--parts", "--upright")).Talk.Said[0]);
    }

    [Fact]
    public async Task One_bad_picture_among_others_stands_in_its_place()
    {
        PaintedBars.Paint(folder["chip.png"], 384, 160, 90, 60, 3);
        File.WriteAllText(folder["note.txt"], "no picture");
        var (code, talk) = await Run("read", "note.txt", "chip.png", "nowhere.png", "--json");
        Assert.Equal(ExitCodes.Look, code);
        Assert.Equal(3, talk.Out.Count);
        var first = JsonDocument.Parse(talk.Out[0]).RootElement;
        Assert.Equal(["format", "id", "error"], CommandRun.Keys(first));
        Assert.Equal("note.txt", first.GetProperty("id").GetString());
        Assert.Equal("chip.png", JsonDocument.Parse(talk.Out[1]).RootElement.GetProperty("image").GetString());
        Assert.Equal(2, talk.Said.Count);
        Assert.Equal(ExitCodes.Refused, (await Run("read", "nowhere.png", "--json")).Code);
    }

    [Fact]
    public async Task No_text_says_so_and_is_no_failure()
    {
        PaintedBars.Paint(folder["bare.png"], 300, 200, 0, 0, 0);
        var (code, talk) = await Run("read", "bare.png", "--json");
        Assert.Equal(ExitCodes.Done, code);
        Assert.Equal("""{"format":1,"image":"bare.png","turn_deg":0,"lines":[]}""", Assert.Single(talk.Out));
        Assert.Equal("bare.png: No text was found here. A mark needs about 12 px of height for each character, and light from the side brings a worn one out.", Assert.Single(talk.Said));
    }

    [Theory]
    [InlineData("10,10,20,20", ExitCodes.Refused, "chip.png: 20 × 20 px are too few to read a mark in; a character needs about 12 px of height. Take the picture closer, or a larger box.")]
    [InlineData("400,10,5,5", ExitCodes.Refused, "chip.png: the box lies outside of the picture, which is 384 × 160 px.")]
    [InlineData("400,10,50,50", ExitCodes.Refused, "chip.png: the box lies outside of the picture, which is 384 × 160 px.")]
    public async Task A_box_that_will_not_do_is_told(string box, int expected, string say)
    {
        PaintedBars.Paint(folder["chip.png"], 384, 160, 90, 60, 3);
        var (code, talk) = await Run("read", "chip.png", "--box", box);
        Assert.Equal((expected, say), (code, Assert.Single(talk.Said)));
    }

    [Theory]
    [InlineData("10,10,50", ExitCodes.Usage, "--box wants x,y,w,h in px, such as 120,80,300,200; “10,10,50” is none.")]
    [InlineData("10,10,0,50", ExitCodes.Usage, "--box wants x,y,w,h in px, such as 120,80,300,200; “10,10,0,50” is none.")]
    [InlineData("NaN,10,5,50", ExitCodes.Usage, "--box wants x,y,w,h in px, such as 120,80,300,200; “NaN,10,5,50” is none.")]
    public async Task A_box_that_is_none_is_a_wrong_call(string box, int expected, string say)
    {
        PaintedBars.Paint(folder["chip.png"], 384, 160, 90, 60, 3);
        var (code, talk) = await Run("read", "chip.png", "--box", box);
        Assert.Equal((expected, say), (code, talk.Said[0]));
        Assert.Equal(["`lidoff read --help` shows how it is called."], talk.Said.Skip(1));
    }

    [Fact]
    public async Task Everything_that_is_wrong_with_a_call_is_said_at_once_and_no_option_is_taken_for_a_name()
    {
        var (code, talk) = await Run("read", "chip.png", "--bax", "--box", "1,2", "--upright", "--spot", "U1", "--all", "--jsn");
        Assert.Equal(ExitCodes.Usage, code);
        Assert.Equal(
            [
                "There is no option “--bax”; a name that begins with a dash is given after --.",
                "There is no option “--jsn”; a name that begins with a dash is given after --.",
                "--box wants x,y,w,h in px, such as 120,80,300,200; “1,2” is none.",
                "--box, --upright, --bands and --parts are for pictures; --spot and --all read a dossier's marks where its spots lie.",
                "--spot and --all want one name, that of the dossier.",
                "Either --spot or --all: which marks are to be read?",
                "`lidoff read --help` shows how it is called.",
            ],
            talk.Said);
        Assert.Equal("--marked goes with --all; a spot named by --spot is read in any case.", (await Run("read", "d", "--spot", "U1", "--marked")).Talk.Said[0]);
        // After "--" any name is a name.
        Assert.Equal("There is no picture at “--bax”.", Assert.Single((await Run("read", "--", "--bax")).Talk.Said));
        // So it is with every command.
        Assert.Equal((ExitCodes.Usage, "There is no option “--jason”; a name that begins with a dash is given after --."), (await Run("look", "d", "--jason")) is var (looked, said) ? (looked, said.Said[0]) : default);
    }

    [Fact]
    public async Task Networks_that_are_missing_or_altered_are_told_and_nothing_else_is_lost()
    {
        PaintedBars.Paint(folder["chip.png"], 384, 160, 90, 60, 3);
        File.AppendAllText(Path.Combine(folder["models"], "finder.onnx"), "x");
        File.Delete(Path.Combine(folder["models"], "reader.onnx"));
        var (code, talk) = await Run("read", "chip.png", "--json");
        Assert.Equal(ExitCodes.Refused, code);
        Assert.Empty(talk.Out);
        Assert.StartsWith("finder.onnx was altered or not copied whole: ", talk.Said[0], StringComparison.Ordinal);
        Assert.StartsWith("reader.onnx is missing in ", talk.Said[1], StringComparison.Ordinal);
    }

    private static void Near((double X, double Y)[] truth, JsonElement outline)
    {
        Assert.Equal(4, outline.GetArrayLength());
        for (var i = 0; i < 4; i++)
        {
            Assert.Equal(truth[i].X, outline[i][0].GetDouble(), 5.0);
            Assert.Equal(truth[i].Y, outline[i][1].GetDouble(), 5.0);
        }
    }
}
