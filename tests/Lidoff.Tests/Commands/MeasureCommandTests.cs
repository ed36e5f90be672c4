using System.Text.Json;
using Lidoff.Seeing.Rendering;

namespace Lidoff.Tests.Commands;

/// <summary>Measuring in pictures that are not as they should be, like a user: what is odd is said, what can be measured is.</summary>
public sealed class MeasureCommandTests : IDisposable
{
    private readonly CommandRun run = new();

    public void Dispose() => run.Dispose();

    [Fact]
    public async Task A_picture_that_breaks_off_is_said_and_measured_by_its_places()
    {
        var whole = Png(Brindle.LampTop());
        var (code, answer, said) = await Measure(whole[..(whole.Length / 2)]);
        Assert.Equal(ExitCodes.Done, code);
        Assert.Equal("“board.png” is a PNG picture whose pixels cannot be read to the end: cut off or damaged. Copy it again from where it came.", Assert.Single(said));
        Assert.Equal(30, answer!.Value.GetProperty("targets")[0].GetProperty("value_mm").GetDouble(), 0.3);
    }

    [Fact]
    public async Task An_orientation_that_mirrors_is_warned_of_and_one_that_turns_is_not()
    {
        var (_, mirrored, _) = await Measure(Png(Brindle.LampTop() with { Orientation = 4 }));
        Assert.Contains("mirrored", Codes(mirrored!.Value));
        var (_, turned, _) = await Measure(Png(Brindle.LampTop() with { Orientation = 3 }));
        Assert.Empty(Codes(turned!.Value));
    }

    [Fact]
    public async Task An_orientation_that_lies_is_found_out_by_the_words()
    {
        // Straight pixels whose tag says that they are a mirror image: what the tag makes of them reads mirrored.
        var scene = Brindle.MainTop();
        var straight = SceneRenderer.Render(scene);
        using var stream = new MemoryStream();
        new RenderedScene(scene with { Orientation = 2 }, straight.StoredWidth, straight.StoredHeight, straight.Pixels, straight.Outline, straight.Parts, straight.Ruler).WritePng(stream);
        var (_, lies, _) = await Measure(stream.ToArray());
        Assert.Contains("mirrored", Codes(lies!.Value));
    }

    [Fact]
    public async Task A_picture_without_anything_of_known_size_is_refused_with_what_to_give()
    {
        var (code, answer, said) = await Measure(Png(Brindle.LampTop()), """{"image":"board.png","target":[{"id":"t","from":[100,620],"to":[1000,620]}]}""");
        Assert.Equal(ExitCodes.Refused, code);
        Assert.Null(answer);
        Assert.StartsWith("The job says nothing of known size. Give “reference” (", Assert.Single(said), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_no_picture_or_only_begins_like_one_is_refused()
    {
        var (code, _, said) = await Measure("not a picture"u8.ToArray());
        Assert.Equal(ExitCodes.Refused, code);
        Assert.Contains("not a picture Lidoff can open", Assert.Single(said), StringComparison.Ordinal);
        (code, _, said) = await Measure(Png(Brindle.LampTop())[..20]);
        Assert.Equal(ExitCodes.Refused, code);
        Assert.Contains("its header cannot be read", Assert.Single(said), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_same_job_gives_the_same_bytes_and_a_slanted_one_its_warning()
    {
        var scene = Brindle.MainTop() with { TiltDegrees = 14 };
        var corners = SceneTruth.Of(scene).Outline;
        var job = JsonSerializer.Serialize(new
        {
            image = "board.png",
            reference = new[] { new { from = new[] { corners[0].X, corners[0].Y }, to = new[] { corners[1].X, corners[1].Y }, length_mm = scene.BoardWidthMm } },
            target = new[] { new { id = "lower edge", from = new[] { corners[3].X, corners[3].Y }, to = new[] { corners[2].X, corners[2].Y } } },
        });
        var (code, first, _) = await Measure(Png(scene), job);
        var (_, second, _) = await Measure(Png(scene), job);
        Assert.Equal(ExitCodes.Done, code);
        Assert.Equal(first!.Value.GetRawText(), second!.Value.GetRawText());
        Assert.Equal(["tilt"], Codes(first.Value));
        var interval = first.Value.GetProperty("targets")[0].GetProperty("interval90_mm");
        Assert.InRange(scene.BoardWidthMm, interval[0].GetDouble(), interval[1].GetDouble());
    }

    [Fact]
    public async Task Ends_clicked_beside_an_edge_are_moved_onto_it_where_that_was_asked_for_and_an_end_on_nothing_stays_and_is_said()
    {
        // The board's own outline: 3 px too far on either side as clicked; and a length that ends on bare table.
        var scene = Brindle.MainTop();
        var corners = SceneTruth.Of(scene).Outline;
        var (left, right) = ((corners[0].X + corners[3].X) / 2, (corners[1].X + corners[2].X) / 2);
        var y = corners[0].Y + 40;
        string Job(bool snap) => JsonSerializer.Serialize(new
        {
            image = "board.png", click_u_px = 2, snap_edges = snap,
            reference = new[] { new { from = new[] { corners[3].X, corners[3].Y }, to = new[] { corners[2].X, corners[2].Y }, length_mm = scene.BoardWidthMm } },
            target = new[] { new { id = "across", from = new[] { left - 3, y }, to = new[] { right + 3, y } }, new { id = "open", from = new[] { left, y }, to = new[] { left - 60, y } } },
        });
        var (_, clicked, _) = await Measure(Png(scene), Job(false));
        var (code, fitted, said) = await Measure(Png(scene), Job(true));
        Assert.Equal(ExitCodes.Done, code);
        JsonElement Target(JsonElement? answer, int at) => answer!.Value.GetProperty("targets")[at];
        Assert.False(Target(clicked, 0).TryGetProperty("edges", out _));
        Assert.InRange(Target(clicked, 0).GetProperty("value_mm").GetDouble() - scene.BoardWidthMm, 0.1, 0.3);
        Assert.Equal(scene.BoardWidthMm, Target(fitted, 0).GetProperty("value_mm").GetDouble(), 0.03);
        Assert.True(Target(fitted, 0).GetProperty("u_mm").GetDouble() < Target(clicked, 0).GetProperty("u_mm").GetDouble());
        var end = Target(fitted, 0).GetProperty("edges").GetProperty("to");
        Assert.True(end.GetProperty("found").GetBoolean());
        Assert.Equal(-3, end.GetProperty("moved_px").GetDouble(), 0.4);
        Assert.False(Target(fitted, 1).GetProperty("edges").GetProperty("to").GetProperty("found").GetBoolean());
        Assert.StartsWith("open: The other end stays as clicked: no edge runs along it within 4.5 px.", Assert.Single(said), StringComparison.Ordinal);
    }

    private static IEnumerable<string?> Codes(JsonElement answer) => answer.GetProperty("targets")[0].GetProperty("warnings").EnumerateArray().Select(warning => warning.GetProperty("code").GetString());

    private static byte[] Png(Scene scene)
    {
        using var stream = new MemoryStream();
        SceneRenderer.Render(scene).WritePng(stream);
        return stream.ToArray();
    }

    private async Task<(int Code, JsonElement? Answer, IReadOnlyList<string> Said)> Measure(byte[] picture, string? job = null)
    {
        File.WriteAllBytes(run["board.png"], picture);
        File.WriteAllText(run["job.json"], job ?? """{"image":"board.png","reference":[{"from":[100,600],"to":[700,600],"length_mm":20}],"target":[{"id":"t","from":[100,620],"to":[1000,620]}]}""");
        var (code, talk) = await run.Of("measure", run["job.json"], "--json");
        return (code, talk.Out.Count > 0 ? CommandRun.Only(talk) : null, [.. talk.Said]);
    }
}
