using System.Text.Json;

namespace Lidoff.Tests.Commands;

/// <summary>
/// A calibration belongs to camera and zoom: one picture of a target tells others their scale and their lens. Both pictures are drawn here (<see cref="BenchPaper"/>) through a lens whose radial
/// term is known, so that every length in them is known too.
/// </summary>
public sealed class MeasureCarriedTests : IDisposable
{
    private static readonly (double X1, double Y1, double X2, double Y2)[] Lengths = [(0, 0, 24, 14), (-10, -4, 34, -4), (33, -4, 33, 26), (-10, 28, 34, 28), (4, 2, 10, 2)];

    private readonly CommandRun run = new();

    public void Dispose() => run.Dispose();

    [Theory]
    [InlineData(0.05)]
    [InlineData(-0.05)]
    public async Task A_target_in_one_picture_gives_another_its_scale_and_lens(double bend)
    {
        var (code, answer, said) = await Measure(new() { Checker = true, Bend = bend }, new() { Bend = bend }, _ => """ "calibration":{"image":"grid.png","pitch_mm":2,"u_mm":0.002} """);
        Assert.Equal(ExitCodes.Done, code);
        // Off by a hundredth at most: the corners of the picture alone are moved by five.
        Holds(answer, 0.01);
        Assert.Equal(2, said.Count);
        Assert.Matches("^A checkerboard: [0-9]+ corners of (13 × 8|8 × 13), ", said[0]);
        Assert.Matches($"^By “grid.png” the camera shows (24|23\\.9[0-9]|24\\.0[0-9]) px/mm ± 1 % about its middle, and its lens moves the end of the long side by {(bend < 0 ? "-" : "")}[45]\\.[0-9]+ ± 0\\.[0-9]+ %, zooming and focusing again allowed for\\.$", said[1]);
        Assert.All(answer!.Value.GetProperty("targets").EnumerateArray(), target => Assert.DoesNotContain("reference-disagrees", Codes(target)));
    }

    [Fact]
    public async Task Own_places_set_the_scale_the_lens_is_carried_and_a_moved_zoom_is_told()
    {
        // Four places about the middle tell slant and scale, and nothing of the lens.
        static string Known(BenchPaper paper) => "\"points\":" + JsonSerializer.Serialize(new[] { (4.0, 6.0), (20, 6), (20, 18), (4, 18) }.Select(place => new { at = paper.Chord(place.Item1, place.Item2, 0, 0).From, mm = new[] { place.Item1, place.Item2 } })) + """,  "calibration":{"image":"grid.png","pitch_mm":2,"u_mm":0.002} """;
        var (code, answer, _) = await Measure(new() { Checker = true, Bend = 0.05 }, new() { Bend = 0.05 }, Known);
        Assert.Equal(ExitCodes.Done, code);
        Holds(answer, 0.01);
        Assert.All(answer!.Value.GetProperty("targets").EnumerateArray(), target => Assert.DoesNotContain("reference-disagrees", Codes(target)));
        (code, answer, _) = await Measure(new() { Checker = true, Bend = 0.05 }, new() { Bend = 0.05, Zoom = 1.06 }, Known);
        Assert.Equal(ExitCodes.Done, code);
        Holds(answer, 0.01);
        foreach (var target in answer!.Value.GetProperty("targets").EnumerateArray())
        {
            var warning = target.GetProperty("warnings").EnumerateArray().Single(each => each.GetProperty("code").GetString() == "reference-disagrees");
            // 1/1.06: 5.7 % less.
            Assert.Matches("^By its own known lengths the picture shows 5\\.[5-9] % less of the board than “grid.png” does, of the same camera and zoom\\. The zoom or the distance was changed in between, ", warning.GetProperty("say").GetString());
        }
    }

    [Fact]
    public async Task What_is_wrong_with_a_calibration_is_named_with_its_place()
    {
        async Task<IReadOnlyList<string>> Refused(BenchPaper grid, string known)
        {
            var (code, answer, said) = await Measure(grid, new(), _ => known);
            Assert.Equal(ExitCodes.Refused, code);
            Assert.Null(answer);
            return said;
        }

        Assert.StartsWith("“calibration”: No checkerboard and no square grid of dots was found. ", Assert.Single(await Refused(new(), """ "calibration":{"image":"grid.png","pitch_mm":2} """)), StringComparison.Ordinal);
        Assert.Matches("^“calibration.pitch_mm”: A checkerboard: .* Give pitch_mm, the distance from one to the next\\.$", Assert.Single(await Refused(new() { Checker = true }, """ "calibration":{"image":"grid.png"} """)));
        Assert.StartsWith("“calibration.image”: There is no picture at “gone.png”", Assert.Single(await Refused(new(), """ "calibration":{"image":"gone.png","pitch_mm":2} """)), StringComparison.Ordinal);
        Assert.Equal(2, (await Refused(new(), """ "calibration":{"pitch_mm":0} """)).Count);
        await File.WriteAllBytesAsync(run["small.png"], SmallPng(), TestContext.Current.CancellationToken);
        Assert.Equal(
            "“calibration.image”: “small.png” is 8 × 8 pixels and the picture to measure 1200 × 900: another size is another scale and another part of the lens. Take both alike.",
            Assert.Single(await Refused(new(), """ "calibration":{"image":"small.png","pitch_mm":2} """)));
    }

    [Fact]
    public async Task A_job_that_is_refused_names_what_is_wrong_with_its_targets_too()
    {
        await File.WriteAllBytesAsync(run["sheet.png"], new BenchPaper().Png(), TestContext.Current.CancellationToken);
        await File.WriteAllTextAsync(run["job.json"], """{"image":"sheet.png","calibration":{"image":"gone.png","pitch_mm":2},"target":[{"id":"U1","kind":"body","box":[10,10,0,5]},{"id":"good","from":[1,1],"to":[90,1]},{"id":"H1","kind":"circle","points":[[1,1],[9,1],[5,8]]}]}""", TestContext.Current.CancellationToken);
        var (code, talk) = await run.Of("measure", run["job.json"], "--json");
        Assert.Equal(ExitCodes.Refused, code);
        Assert.Collection(
            talk.Said,
            said => Assert.StartsWith("“calibration.image”: There is no picture at “gone.png”", said, StringComparison.Ordinal),
            said => Assert.Equal("U1: \"box\" should be four numbers: left, top, width and height, the last two above 0.", said));
    }

    private static byte[] SmallPng()
    {
        using var stream = new MemoryStream();
        new Seeing.Rendering.RenderedScene(Seeing.Rendering.Brindle.LampTop() with { Orientation = 1 }, 8, 8, new byte[8 * 8 * 3], [], [], null).WritePng(stream);
        return stream.ToArray();
    }

    private static IEnumerable<string?> Codes(JsonElement target) => target.GetProperty("warnings").EnumerateArray().Select(warning => warning.GetProperty("code").GetString());

    private static void Holds(JsonElement? answer, double share)
    {
        foreach (var (target, (x1, y1, x2, y2)) in answer!.Value.GetProperty("targets").EnumerateArray().Zip(Lengths))
        {
            var truth = Math.Sqrt(((x1 - x2) * (x1 - x2)) + ((y1 - y2) * (y1 - y2)));
            var interval = target.GetProperty("interval90_mm");
            Assert.InRange(truth, interval[0].GetDouble(), interval[1].GetDouble());
            Assert.InRange(target.GetProperty("value_mm").GetDouble() / truth, 1 - share, 1 + share);
        }
    }

    private async Task<(int Code, JsonElement? Answer, IReadOnlyList<string> Said)> Measure(BenchPaper grid, BenchPaper paper, Func<BenchPaper, string> known)
    {
        await File.WriteAllBytesAsync(run["grid.png"], grid.Png());
        await File.WriteAllBytesAsync(run["sheet.png"], paper.Png());
        var asked = JsonSerializer.Serialize(Lengths.Select((each, i) => (Id: $"L{i}", Ends: paper.Chord(each.X1, each.Y1, each.X2, each.Y2))).Select(each => new { id = each.Id, from = each.Ends.From, to = each.Ends.To }));
        await File.WriteAllTextAsync(run["job.json"], $$"""{"image":"sheet.png",{{known(paper)}},"click_u_px":0.5,"target":{{asked}}}""");
        var (code, talk) = await run.Of("measure", run["job.json"], "--json");
        return (code, talk.Out.Count > 0 ? CommandRun.Only(talk) : null, [.. talk.Said]);
    }
}
