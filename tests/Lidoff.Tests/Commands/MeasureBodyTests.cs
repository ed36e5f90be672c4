using System.Globalization;
using System.Text.Json;

namespace Lidoff.Tests.Commands;

/// <summary>Bodies measured from the command line: a rectangle of known size is drawn here (<see cref="BenchPaper"/>), and roughly where it lies is said by a box or by corners.</summary>
public sealed class MeasureBodyTests : IDisposable
{
    // Two lengths across the sheet at a right angle: what is known.
    private static readonly (double X1, double Y1, double X2, double Y2)[] Known = [(-8, -2, 30, -2), (33, -2, 33, 24)];

    private readonly CommandRun run = new();

    public void Dispose() => run.Dispose();

    [Theory]
    [InlineData(8, 6, 7, 4, 3)]
    [InlineData(2, 10, 5, 9, -4)]
    public async Task A_box_drawn_roughly_around_a_body_gives_length_and_width(double x, double y, double w, double h, int off)
    {
        var paper = new BenchPaper { Body = (x, y, w, h, 0) };
        var (a, b) = (paper.Show(x, y), paper.Show(x + w, y + h));
        // Off by a few pixels, on every side another way.
        var box = JsonSerializer.Serialize(new[] { a.X + off, a.Y - (off / 2.0), b.X - a.X - (1.5 * off), b.Y - a.Y + off });
        var (code, answer, said) = await Measure(paper, $$"""{"id":"U1","kind":"body","box":{{box}}}""");
        Assert.Equal(ExitCodes.Done, code);
        Assert.Empty(said);
        var body = answer!.Value.GetProperty("targets")[0];
        Assert.Equal(["id", "kind", "length", "width", "warnings", "edges"], body.EnumerateObject().Select(each => each.Name));
        Holds(body, Math.Max(w, h), Math.Min(w, h));
        Assert.Empty(body.GetProperty("warnings").EnumerateArray());
        var sides = body.GetProperty("edges").GetProperty("sides").EnumerateArray().ToList();
        Assert.Equal(4, sides.Count);
        Assert.All(sides, side => Assert.True(side.GetProperty("found").GetBoolean()));
        // From the top left clockwise, a tenth of a pixel.
        foreach (var (corner, place) in body.GetProperty("edges").GetProperty("corners").EnumerateArray().Zip(new[] { paper.Show(x, y), paper.Show(x + w, y), paper.Show(x + w, y + h), paper.Show(x, y + h) }))
        {
            Assert.Equal(place.X, corner[0].GetDouble(), 0.3);
            Assert.Equal(place.Y, corner[1].GetDouble(), 0.3);
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(24)]
    [InlineData(-41)]
    public async Task Three_corners_or_four_of_a_body_at_any_turn(double turn)
    {
        var paper = new BenchPaper { Body = (6, 5, 10, 6, turn) };
        foreach (var count in new[] { 3, 4 })
        {
            var (code, answer, _) = await Measure(paper, $$"""{"id":"U1","kind":"body","points":{{Corners(paper, turn, count)}},"u_px":1.5}""");
            Assert.Equal(ExitCodes.Done, code);
            Holds(answer!.Value.GetProperty("targets")[0], 10, 6);
        }

        // As people read it.
        var (text, talk) = await run.Of("measure", run["job.json"]);
        Assert.Equal(ExitCodes.Done, text);
        Assert.Matches("^U1: (10|9\\.9[0-9]*|10\\.0[0-9]*) × (6|5\\.9[0-9]*|6\\.0[0-9]*) mm, 90 % between [0-9.]+ and [0-9.]+ mm, [0-9.]+ and [0-9.]+ mm$", Assert.Single(talk.Out));
    }

    [Fact]
    public async Task A_side_without_an_edge_stays_as_given_and_is_said()
    {
        // No body there at all: four sides stay, and the interval is that of the corners.
        var (code, answer, said) = await Measure(new(), """{"id":"U1","kind":"body","points":[[400,300],[700,300],[700,500],[400,500]]}""");
        Assert.Equal(ExitCodes.Done, code);
        var body = answer!.Value.GetProperty("targets")[0];
        Assert.All(body.GetProperty("edges").GetProperty("sides").EnumerateArray(), side => Assert.False(side.GetProperty("found").GetBoolean()));
        Assert.Equal(4, said.Count);
        Assert.StartsWith("U1: The first side stays as clicked: no edge runs along it within ", said[0], StringComparison.Ordinal);
        // 300 px at 24 px/mm; two corners at each end, each to half a pixel.
        Assert.Equal(12.5, body.GetProperty("length").GetProperty("value_mm").GetDouble(), 0.1);
        Assert.InRange(body.GetProperty("length").GetProperty("u_mm").GetDouble(), 0.5 / 24, 0.25);
    }

    [Fact]
    public async Task A_picture_that_breaks_off_is_measured_by_the_corners_alone()
    {
        var paper = new BenchPaper { Body = (6, 5, 10, 6, 0) };
        var (code, answer, said) = await Measure(paper, $$"""{"id":"U1","kind":"body","points":{{Corners(paper, 0, 4)}}}""", half: true);
        Assert.Equal(ExitCodes.Done, code);
        Assert.Equal("“sheet.png” is a PNG picture whose pixels cannot be read to the end: cut off or damaged. Copy it again from where it came.", Assert.Single(said));
        Holds(answer!.Value.GetProperty("targets")[0], 10, 6);
    }

    [Theory]
    [InlineData("""{"id":"U1","kind":"body","box":[1000,100,300,100]}""", "box", "“box” lies at (1300, 100), outside the picture of 1200 × 900 pixels.")]
    [InlineData("""{"id":"U1","kind":"body","box":[100,100,0,100]}""", "box", "\"box\" should be four numbers: left, top, width and height, the last two above 0.")]
    [InlineData("""{"id":"U1","kind":"body","box":[100,100,50,50],"points":[[1,1],[2,2],[3,1]]}""", "box", "\"box\" should be alone: it stands in the place of points.")]
    [InlineData("""{"id":"U1","kind":"body","points":[[100,100],[300,100],[300,100]]}""", "points[2]", "“points[2]” is the same place as the one before it.")]
    [InlineData("""{"id":"U1","kind":"body","points":[[100,100],[300,100],[100,300],[300,300]]}""", "points", "The places are not the corners of a rectangle: give three or four of them, one after the other around it, or a box: left, top, width, height.")]
    [InlineData("""{"id":"U1","kind":"body","points":[[100,100],[300,100],[500,101]]}""", "points", "The places are not the corners of a rectangle: give three or four of them, one after the other around it, or a box: left, top, width, height.")]
    public async Task What_is_wrong_with_a_body_is_said_in_its_place_and_the_others_are_measured(string target, string where, string say)
    {
        var paper = new BenchPaper { Body = (6, 5, 10, 6, 0) };
        var (code, answer, _) = await Measure(paper, $$"""{{target}},{"id":"U2","kind":"body","points":{{Corners(paper, 0, 4)}}}""");
        Assert.Equal(ExitCodes.Look, code);
        var error = answer!.Value.GetProperty("targets")[0].GetProperty("error");
        Assert.Equal((where, say), (error.GetProperty("where").GetString(), error.GetProperty("say").GetString()));
        Holds(answer.Value.GetProperty("targets")[1], 10, 6);
    }

    private static string Corners(BenchPaper paper, double turn, int count)
    {
        var (sin, cos) = Math.SinCos(turn * Math.PI / 180);
        var (x, y) = (6 + 5.0, 5 + 3.0);
        // Each a pixel off or so, another way.
        (double U, double V, double X, double Y)[] at = [(-5, -3, 0.8, -0.7), (5, -3, -0.6, 0.9), (5, 3, 0.7, 0.5), (-5, 3, -0.9, -0.4)];
        return "[" + string.Join(',', at.Take(count).Select(each => (Place: paper.Show(x + (cos * each.U) - (sin * each.V), y + (sin * each.U) + (cos * each.V)), each.X, each.Y))
            .Select(each => string.Create(CultureInfo.InvariantCulture, $"[{each.Place.X + each.X:0.##},{each.Place.Y + each.Y:0.##}]"))) + "]";
    }

    private static void Holds(JsonElement body, double length, double width)
    {
        foreach (var (name, truth) in new[] { ("length", length), ("width", width) })
        {
            var side = body.GetProperty(name);
            Assert.InRange(truth, side.GetProperty("interval90_mm")[0].GetDouble(), side.GetProperty("interval90_mm")[1].GetDouble());
            Assert.Equal(truth, side.GetProperty("value_mm").GetDouble(), 0.02 * truth);
        }
    }

    private async Task<(int Code, JsonElement? Answer, IReadOnlyList<string> Said)> Measure(BenchPaper paper, string targets, bool half = false)
    {
        var png = paper.Png();
        await File.WriteAllBytesAsync(run["sheet.png"], half ? png[..(png.Length / 2)] : png);
        var references = JsonSerializer.Serialize(Known.Select(each => (Ends: paper.Chord(each.X1, each.Y1, each.X2, each.Y2), Mm: Math.Abs(each.X2 - each.X1) + Math.Abs(each.Y2 - each.Y1))).Select(each => new { from = each.Ends.From, to = each.Ends.To, length_mm = each.Mm, u_mm = 0.01 }));
        await File.WriteAllTextAsync(run["job.json"], $$"""{"image":"sheet.png","reference":{{references}},"click_u_px":0.5,"target":[{{targets}}]}""");
        var (code, talk) = await run.Of("measure", run["job.json"], "--json");
        return (code, talk.Out.Count > 0 ? CommandRun.Only(talk) : null, [.. talk.Said]);
    }
}
