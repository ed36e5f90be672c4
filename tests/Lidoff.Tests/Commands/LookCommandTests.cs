using System.Globalization;
using Lidoff.Seeing.Rendering;

namespace Lidoff.Tests.Commands;

/// <summary>look, called like a user, on a board rendered with a pinhole camera that leans by 14°.</summary>
public sealed class LookCommandTests : IDisposable
{
    private static readonly Scene Leaning = Brindle.MainTop() with { TiltDegrees = 14 };

    private readonly CommandRun run = new();

    public void Dispose() => run.Dispose();

    [Fact]
    public async Task Pictures_with_a_known_length_are_looked_at_once_and_lengths_rest_on_it()
    {
        await Begin();
        var before = await Claim();
        var (code, talk) = await run.Of("look", "d", "--json");
        Assert.Equal(ExitCodes.Done, code);
        var look = CommandRun.Only(talk);
        Assert.Equal(["format", "id", "kind", "picture", "edges", "edges_covariance", "words_mirrored", "program"], CommandRun.Keys(look));
        Assert.Equal("look", look.GetProperty("kind").GetString());
        Assert.False(look.GetProperty("words_mirrored").GetBoolean());
        var after = await Claim();
        // The board is as wide at its other edge, which the slant makes look otherwise.
        Assert.InRange(Leaning.BoardWidthMm, after.Low, after.High);
        Assert.True(after.High - after.Low < 0.6 * (before.High - before.Low));
        Assert.Contains(look.GetProperty("id").GetString(), after.RestsOn);

        var again = await run.Of("look", "d");
        Assert.Equal((ExitCodes.Done, "No picture with a known length is left to look at."), (again.Code, Assert.Single(again.Talk.Said)));
    }

    [Fact]
    public async Task A_picture_may_be_named_and_one_that_is_not_there_is_refused()
    {
        await Begin();
        var (code, talk) = await run.Of("look", "d", "nowhere.png", "board.png");
        Assert.Equal(ExitCodes.Look, code);
        Assert.Equal("board.png: its straight edges tell how the camera stood", Assert.Single(talk.Out));
        Assert.Contains("nowhere.png", Assert.Single(talk.Said), StringComparison.Ordinal);
        Assert.Equal(ExitCodes.Refused, (await run.Of("look", "d", "nowhere.png")).Code);
    }

    private async Task Begin()
    {
        await run.Of("new", "d");
        await using (var stream = File.Create(run["board.png"])) SceneRenderer.Render(Leaning).WritePng(stream);
        await run.Of("add", "d", run["board.png"]);
        var corners = SceneTruth.Of(Leaning).Outline;
        await run.Note(
            Text($$"""{"kind":"scale","picture":"board.png","from":[{{corners[0].X}},{{corners[0].Y}}],"to":[{{corners[1].X}},{{corners[1].Y}}],"length_mm":{{Leaning.BoardWidthMm}},"u_mm":0.02}"""),
            Text($$"""{"kind":"length","spot":"board","what":"lower edge","picture":"board.png","from":[{{corners[3].X}},{{corners[3].Y}}],"to":[{{corners[2].X}},{{corners[2].Y}}],"click_px":0.5}"""),
            """{"kind":"claim","claim":"C1","text":"The lower edge is {length:board:lower edge}.","why":false}""");
    }

    private async Task<(double Low, double High, IReadOnlyList<string?> RestsOn)> Claim()
    {
        var claim = CommandRun.Only((await run.Of("claims", "d", "--json")).Talk);
        var interval = claim.GetProperty("values").GetProperty("length:board:lower edge").GetProperty("interval90");
        return (interval[0].GetDouble(), interval[1].GetDouble(), [.. claim.GetProperty("rests_on").EnumerateArray().Select(each => each.GetString())]);
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
