using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace Lidoff.Tests.Commands;

/// <summary>
/// Pictures that measure themselves, like a user: a target or a ruler lies in the picture and nobody points at it. The pictures are drawn here (<see cref="BenchPaper"/>),
/// so that every length in them is known; the sentences are those a person must see where something is wrong, each with its place.
/// </summary>
public sealed partial class MeasureFindTests : IDisposable
{
    private static readonly (double X1, double Y1, double X2, double Y2)[] Lengths = [(0, 0, 24, 14), (0, 14, 24, 0), (-8, 17.5, 30, 17.5), (33, -4, 33, 26), (4, 2, 10, 2)];

    private readonly CommandRun run = new();

    public void Dispose() => run.Dispose();

    [Theory]
    [InlineData(true, 0)]
    [InlineData(false, 0)]
    [InlineData(true, 9)]
    [InlineData(false, 9)]
    public async Task A_target_gives_the_scale_and_what_it_says_of_itself(bool checker, double slant)
    {
        var paper = new BenchPaper { Checker = checker, Dots = !checker, SlantDegrees = slant };
        var (code, answer, said) = await Measure(paper, """ "pattern":{"pitch_mm":2,"u_mm":0.002} """);
        Assert.Equal(ExitCodes.Done, code);
        Holds(paper, answer, 0.003);
        Assert.Equal(3, said.Count);
        // 13 × 8 places, of which a few may be missed at the rim; 24 px/mm times 2 mm is 48 px.
        var (count, px) = (Number(said[0], checker ? "^A checkerboard: ([0-9]+) corners of (?:13 × 8|8 × 13), " : "^A dot grid: ([0-9]+) dots of (?:13 × 8|8 × 13), "), Number(said[0], ", ([0-9.]+) px from one to the next"));
        Assert.InRange(count, 98, 104);
        Assert.InRange(px, 47, 49);
        Assert.Matches("^At a pitch of 2 mm each is within [0-9.]+ µm of it", said[1]);
        Assert.StartsWith("The lens moves the end of the long side by ", said[2], StringComparison.Ordinal);
        if (slant == 0) Assert.All(answer!.Value.GetProperty("targets").EnumerateArray(), target => Assert.Empty(Codes(target)));
    }

    [Theory]
    [InlineData(40, 1, new[] { 5, 10 })]
    [InlineData(80, 0.5, new[] { 2, 10, 20 })]
    public async Task A_ruler_is_found_read_and_gives_the_scale(int gaps, double tick, int[] longer)
    {
        var paper = new BenchPaper { Ruler = (gaps, tick), Longer = longer };
        var (code, answer, said) = await Measure(paper, """ "ruler":"find" """);
        Assert.Equal(ExitCodes.Done, code);
        // One known length below what is measured leaves the slant open: the far lengths are as wide as that.
        Holds(paper, answer, 0.03);
        Assert.All(answer!.Value.GetProperty("targets").EnumerateArray(), target => Assert.Empty(Codes(target)));
        var says = Assert.Single(said);
        Assert.Equal(24, Number(says, "^A ruler lies from \\([0-9]+, [0-9]+\\) to \\([0-9]+, [0-9]+\\)\\. The ruler shows [0-9]+ gaps of [0-9.]+ mm between its lines: ([0-9.]+) px/mm\\.$"), 0.06);
        Assert.Contains($" gaps of {tick.ToString(CultureInfo.InvariantCulture)} mm ", says, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_ruler_and_a_target_together_agree_and_a_wrong_pitch_is_told()
    {
        var paper = new BenchPaper { Checker = true, Ruler = (40, 1) };
        var (code, answer, said) = await Measure(paper, """ "ruler":"find","pattern":{"pitch_mm":2} """);
        Assert.Equal(ExitCodes.Done, code);
        Assert.Equal(4, said.Count);
        Holds(paper, answer, 0.005);
        Assert.All(answer!.Value.GetProperty("targets").EnumerateArray(), target => Assert.Empty(Codes(target)));
        // The sheet's pitch taken for 2.1 mm: the ruler knows better, and the intervals hold either.
        (code, answer, _) = await Measure(paper, """ "ruler":"find","pattern":{"pitch_mm":2.1} """);
        Assert.Equal(ExitCodes.Done, code);
        foreach (var target in answer!.Value.GetProperty("targets").EnumerateArray())
        {
            Assert.Equal(["reference-disagrees"], Codes(target));
            Assert.StartsWith("The references disagree by ", target.GetProperty("warnings")[0].GetProperty("say").GetString(), StringComparison.Ordinal);
        }

        Holds(paper, answer, 0.06);
    }

    [Fact]
    public async Task Three_known_lengths_that_only_a_slant_explains_say_how_large_it_is()
    {
        // A bare sheet: nothing in the picture itself tells.
        var paper = new BenchPaper { SlantDegrees = 15 };
        var known = new[] { (-8.0, -2.0, 30.0, -2.0), (-8, 26, 30, 26), (33, -2, 33, 26) }.Select(each => (paper.Chord(each.Item1, each.Item2, each.Item3, each.Item4), Mm: Math.Abs(each.Item3 - each.Item1) + Math.Abs(each.Item4 - each.Item2)));
        var references = JsonSerializer.Serialize(known.Select(each => new { from = each.Item1.From, to = each.Item1.To, length_mm = each.Mm, u_mm = 0.01 }));
        var (code, answer, _) = await Measure(paper, $" \"reference\":{references} ");
        Assert.Equal(ExitCodes.Done, code);
        Holds(paper, answer, 0.02);
        foreach (var target in answer!.Value.GetProperty("targets").EnumerateArray())
        {
            var warning = Assert.Single(target.GetProperty("warnings").EnumerateArray());
            Assert.Equal("tilt", warning.GetProperty("code").GetString());
            var says = warning.GetProperty("say").GetString()!;
            var (low, high) = (Number(says, "^The camera looked at a slant of about [0-9]+° \\(90 % between ([0-9]+) and"), Number(says, "^The camera looked at a slant of about [0-9]+° \\(90 % between [0-9]+ and ([0-9]+)°\\)"));
            Assert.InRange(15, low, high);
            Assert.Matches("The known lengths are (over )?[0-9]+ times likelier by a camera at a slant, of about [0-9]+° \\(90 % between [0-9]+ and [0-9]+°\\), than square to the board\\.", says);
        }
    }

    [Fact]
    public async Task Where_neither_is_found_both_are_told_at_once_each_with_its_place()
    {
        var empty = new BenchPaper();
        var (code, answer, said) = await Measure(empty, """ "ruler":"find","pattern":{"pitch_mm":2} """);
        Assert.Equal(ExitCodes.Refused, code);
        Assert.Null(answer);
        Assert.Equal(2, said.Count);
        Assert.StartsWith("“ruler”: No ruler was found in the picture: 23 lines or more must show, ", said[0], StringComparison.Ordinal);
        Assert.StartsWith("“pattern”: No checkerboard and no square grid of dots was found. ", said[1], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_ruler_of_lines_alike_is_asked_about_and_its_place_with_tick_mm_answers()
    {
        // Every fifth and eighth line longer is neither millimetres nor inches; an inch in sixteenths that shows 40 of them may be half of one in thirty-seconds.
        var paper = new BenchPaper { Ruler = (40, 1), Longer = [2, 4, 8, 16] };
        var (code, answer, said) = await Measure(paper, """ "ruler":"find" """);
        Assert.Equal(ExitCodes.Refused, code);
        Assert.Null(answer);
        var place = PlaceOf().Match(Assert.Single(said));
        Assert.True(place.Success, said[0]);
        Assert.Contains(" do not tell whether that is 1 mm, 0.5 mm or 1/16, 1/32 or 1/64 in.", said[0], StringComparison.Ordinal);
        // What it offers to write is what answers it.
        (code, answer, said) = await Measure(paper, " " + place.Groups[1].Value.Replace("\"tick_mm\":…", "\"tick_mm\":1", StringComparison.Ordinal) + " ");
        Assert.Equal(ExitCodes.Done, code);
        Holds(paper, answer, 0.03);
        Assert.Equal(24, Number(Assert.Single(said), "^The ruler shows [0-9]+ gaps of 1 mm between its lines: ([0-9.]+) px/mm\\.$"), 0.06);
    }

    [Fact]
    public async Task A_pitch_that_is_not_told_is_asked_for_with_what_was_found()
    {
        var (code, answer, said) = await Measure(new() { Checker = true }, """ "pattern":{} """);
        Assert.Equal(ExitCodes.Refused, code);
        Assert.Null(answer);
        Assert.Matches("^“pattern.pitch_mm”: A checkerboard: [0-9]+ corners of (13 × 8|8 × 13), .* Give pitch_mm, the distance from one to the next\\.$", Assert.Single(said));
    }

    [Fact]
    public async Task A_length_outside_the_picture_is_told_in_its_place_and_the_others_are_measured()
    {
        var paper = new BenchPaper { Checker = true };
        var (from, to) = paper.Chord(0, 0, 24, 0);
        var (code, answer, _) = await Measure(paper, """ "pattern":{"pitch_mm":2} """, [("inside", from, to), ("outside", from, [1300, 200])]);
        Assert.Equal(ExitCodes.Look, code);
        Assert.Equal(24, answer!.Value.GetProperty("targets")[0].GetProperty("value_mm").GetDouble(), 0.3);
        var outside = answer.Value.GetProperty("targets")[1];
        Assert.Equal("outside", outside.GetProperty("id").GetString());
        Assert.Equal("to", outside.GetProperty("error").GetProperty("where").GetString());
        Assert.Equal("“to” lies at (1300, 200), outside the picture of 1200 × 900 pixels.", outside.GetProperty("error").GetProperty("say").GetString());
    }

    [Fact]
    public async Task What_is_wrong_with_a_pattern_or_a_ruler_is_named_with_its_place_before_the_picture_is_looked_at()
    {
        var paper = new BenchPaper();
        async Task<IReadOnlyList<string>> Refused(string known)
        {
            var (code, answer, said) = await Measure(paper, known);
            Assert.Equal(ExitCodes.Refused, code);
            Assert.Null(answer);
            return said;
        }

        Assert.Equal(
            ["\"pattern.pitch_mm\" should be a number above 0, but here it is 0.", "\"pattern.u_mm\" should be a number of 0 or more, but here it is -1."],
            await Refused(""" "pattern":{"pitch_mm":0,"u_mm":-1} """));
        Assert.StartsWith("\"pattern\" should be ", Assert.Single(await Refused(""" "pattern":"find" """)), StringComparison.Ordinal);
        Assert.Equal("\"ruler\" should be the word find or a list of rulers, each with from and to.", Assert.Single(await Refused(""" "ruler":"look" """)));
        Assert.Equal(
            ["“ruler[0]”: No evenly spaced lines were found there. Point along a row of at least eight of them, across their middles, and have the picture at hand.", "“ruler[1]” lies at (1300, 60), outside the picture of 1200 × 900 pixels."],
            await Refused(""" "ruler":[{"from":[100,800],"to":[1100,800]},{"from":[100,60],"to":[1300,60]}] """));
    }

    [Fact]
    public async Task A_picture_that_breaks_off_has_no_target_and_that_is_said_once()
    {
        var whole = new BenchPaper { Checker = true }.Png();
        var (code, answer, said) = await Measure(whole[..(whole.Length / 2)], """ "pattern":{"pitch_mm":2} """, [("t", [10, 10], [400, 10])]);
        Assert.Equal(ExitCodes.Refused, code);
        Assert.Null(answer);
        Assert.Equal("“sheet.png” is a PNG picture whose pixels cannot be read to the end: cut off or damaged. Copy it again from where it came.", Assert.Single(said));
    }

    [GeneratedRegex("Point along it, with tick_mm: (\"ruler\":\\[\\{\"from\":\\[[0-9]+,[0-9]+\\],\"to\":\\[[0-9]+,[0-9]+\\],\"tick_mm\":…\\}\\])")]
    private static partial Regex PlaceOf();

    private static double Number(string text, string pattern) => double.Parse(Regex.Match(text, pattern).Groups[1].Value, CultureInfo.InvariantCulture);

    private static IEnumerable<string?> Codes(JsonElement target) => target.GetProperty("warnings").EnumerateArray().Select(warning => warning.GetProperty("code").GetString());

    /// <summary>Every length's interval holds the truth, and the value lies within so large a share of it.</summary>
    private static void Holds(BenchPaper paper, JsonElement? answer, double share)
    {
        foreach (var (target, (x1, y1, x2, y2)) in answer!.Value.GetProperty("targets").EnumerateArray().Zip(Lengths))
        {
            var truth = Math.Sqrt(((x1 - x2) * (x1 - x2)) + ((y1 - y2) * (y1 - y2)));
            var interval = target.GetProperty("interval90_mm");
            Assert.InRange(truth, interval[0].GetDouble(), interval[1].GetDouble());
            Assert.InRange(target.GetProperty("value_mm").GetDouble() / truth, 1 - share, 1 + share);
        }
    }

    private Task<(int Code, JsonElement? Answer, IReadOnlyList<string> Said)> Measure(BenchPaper paper, string known) =>
        Measure(paper, known, [.. Lengths.Select((each, i) => ($"L{i}", paper.Chord(each.X1, each.Y1, each.X2, each.Y2))).Select(each => (each.Item1, each.Item2.From, each.Item2.To))]);

    private Task<(int Code, JsonElement? Answer, IReadOnlyList<string> Said)> Measure(BenchPaper paper, string known, (string Id, double[] From, double[] To)[] targets) => Measure(paper.Png(), known, targets);

    private async Task<(int Code, JsonElement? Answer, IReadOnlyList<string> Said)> Measure(byte[] picture, string known, (string Id, double[] From, double[] To)[] targets)
    {
        File.WriteAllBytes(run["sheet.png"], picture);
        var asked = JsonSerializer.Serialize(targets.Select(target => new { id = target.Id, from = target.From, to = target.To }));
        File.WriteAllText(run["job.json"], $$"""{"image":"sheet.png",{{known}},"click_u_px":0.5,"target":{{asked}}}""");
        var (code, talk) = await run.Of("measure", run["job.json"], "--json");
        return (code, talk.Out.Count > 0 ? CommandRun.Only(talk) : null, [.. talk.Said]);
    }
}
