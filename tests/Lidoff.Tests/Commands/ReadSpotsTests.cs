using System.Text.Json;
using Lidoff.Seeing.Reading.Lattices;
using Lidoff.TestSupport;

namespace Lidoff.Tests.Commands;

/// <summary>read on a dossier's spots, called like a user, on painted bars and with networks of a few nodes that take each bright bar for an A and find no body.</summary>
public sealed class ReadSpotsTests : IDisposable
{
    private readonly TempFolder folder = new();

    public ReadSpotsTests() => PaintedBars.Networks(folder["models"]);

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task A_mark_is_read_where_its_box_lies_and_stored_as_the_contract_lays_it_down()
    {
        await Begin();
        await Note("""{"kind":"spot","spot":"U1","specimen":"A","picture":"board.png","box":[430,360,300,120]}""");
        var (code, talk) = await Run("read", "d", "--spot", "U1", "--json");
        Assert.Equal(ExitCodes.Done, code);
        var read = CommandRun.Only(talk);
        Assert.Equal(["format", "id", "kind", "specimen", "spot", "pictures", "region", "turn_deg", "lines", "readings", "outlines", "in_picture", "networks", "settings", "program"], CommandRun.Keys(read));
        Assert.Equal(("reading", "A", "U1"), (read.GetProperty("kind").GetString(), read.GetProperty("specimen").GetString(), read.GetProperty("spot").GetString()));
        // The box as it was drawn: its middle, width, height, turn.
        Assert.Equal([580, 420, 300, 120, 0], read.GetProperty("region").EnumerateArray().Select(number => number.GetDouble()));
        Assert.Equal("AA", read.GetProperty("readings")[0][0][0].GetString());
        // It stands in the journal, and reading it again adds nothing.
        Assert.Equal([read.GetProperty("id").GetString()], await Readings());
        var again = await Run("read", "d", "--spot", "U1", "--json");
        Assert.Equal((ExitCodes.Done, talk.Out[0]), (again.Code, Assert.Single(again.Talk.Out)));
        Assert.Equal("U1 was read before, by the same networks in the same pictures: it is the same reading, and nothing was stored anew.", Assert.Single(again.Talk.Said));
        Assert.Single(await Readings());
        Assert.Equal(["U1 of specimen A:", "  AA  over 99 %"], (await Run("read", "d", "--spot", "U1")).Talk.Out);
    }

    [Fact]
    public async Task The_report_tells_whose_reading_it_is_and_how_sure()
    {
        await Begin();
        await Note("""{"kind":"spot","spot":"U1","picture":"board.png","box":[430,360,300,120]}""", """{"kind":"claim","claim":"C1","text":"It says {mark:U1}.","why":false}""");
        await Run("read", "d", "--all");
        async Task<string> Told()
        {
            // With the facts about parts, which lie beside the program.
            var talk = new RecordedTalk();
            await LidoffProgram.Run(["tell", "d", "--to", folder["out"], "--as", "md", "--workspace", folder["w"]], Seats.Of(talk, folder.Path), TestContext.Current.CancellationToken);
            return File.ReadAllText(Directory.EnumerateFiles(folder["out"], "*.md").Single());
        }

        var told = await Told();
        Assert.Contains(", read by the machine, over 99 %", told, StringComparison.Ordinal);
        Assert.Contains("It says **AA \\(read by the machine, over 99 %\\)**", told, StringComparison.Ordinal);
        await Note("""{"kind":"mark","spot":"U1","lines":["A4"]}""");
        told = await Told();
        Assert.Contains("; the machine read AA, over 99 %", told, StringComparison.Ordinal);
        Assert.Contains("It says **A4**", told, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_reading_of_more_pictures_takes_the_place_of_the_one_before()
    {
        await Begin();
        await Note("""{"kind":"spot","spot":"U1","picture":"board.png","box":[430,360,300,120]}""");
        await Run("read", "d", "--spot", "U1");
        PaintedBars.Paint(folder["close.png"], 384, 160, 90, 60, 2);
        await Run("add", "d", folder["close.png"]);
        // Both sides of the body, as they are clicked when it is outlined; two bars from (90, 60) to (222, 100).
        await Note(
            """{"kind":"length","spot":"U1","what":"long side","picture":"close.png","from":[50,130],"to":[260,130]}""",
            """{"kind":"length","spot":"U1","what":"short side","picture":"close.png","from":[260,130],"to":[260,30]}""");
        var (code, talk) = await Run("read", "d", "--all", "--json");
        Assert.Equal(ExitCodes.Done, code);
        var read = CommandRun.Only(talk);
        Assert.Equal(2, read.GetProperty("pictures").GetArrayLength());
        // One of them counts, the other stands behind it.
        Assert.Equal(2, (await Readings()).Count);
        Assert.Equal(1, (await Entries()).Count(entry => entry.GetProperty("kind").GetString() == "supersede"));
        Assert.Equal("No mark is left to read: 1 read by these networks before.", Assert.Single((await Run("read", "d", "--all")).Talk.Said));
    }

    [Fact]
    public async Task All_passes_over_what_a_person_read_and_what_was_taken_back_and_tells_each_that_could_not_be_read()
    {
        await Begin();
        await Note(
            """{"kind":"spot","spot":"U1","picture":"board.png","box":[430,360,300,120]}""",
            """{"kind":"spot","spot":"U2","picture":"board.png","box":[20,20,300,120]}""",
            """{"kind":"spot","spot":"U3","picture":"board.png","point":[580,420]}""",
            """{"kind":"spot","spot":"U4","picture":"gone.png","point":[5,5]}""",
            """{"kind":"spot","spot":"H1","class":"housing","picture":"board.png","box":[430,360,300,120]}""",
            """{"kind":"mark","spot":"U2","lines":["8"]}""");
        var (code, talk) = await Run("read", "d", "--all", "--json");
        Assert.Equal(ExitCodes.Look, code);
        Assert.Equal(2, talk.Out.Count);
        Assert.Equal("reading", JsonDocument.Parse(talk.Out[0]).RootElement.GetProperty("kind").GetString());
        Assert.Equal("U3", JsonDocument.Parse(talk.Out[1]).RootElement.GetProperty("id").GetString());
        Assert.Equal("Passed over: 1 read by a person (--marked reads them too).", talk.Said[0]);
        Assert.StartsWith("No body was found in “board.png” where U3 was pointed at, nor text under that place.", Assert.Single(talk.Said.Skip(1)), StringComparison.Ordinal);
        // Taken back, it is not read again unless it is asked for by name.
        await Note($$"""{"kind":"undo","target":"{{Assert.Single(await Readings())}}"}""");
        Assert.DoesNotContain((await Run("read", "d", "--all")).Talk.Out, line => line.StartsWith("U1", StringComparison.Ordinal));
        Assert.Equal(["U1:", "  AA  over 99 %"], (await Run("read", "d", "--spot", "U1")).Talk.Out);
        // A person's mark is read too where that is wanted: there is nothing on this one.
        Assert.Contains("U2: nothing was read", (await Run("read", "d", "--all", "--marked")).Talk.Out);
        Assert.Equal("No picture of the dossier shows “U9”: point at it in one, or outline its body.", Assert.Single((await Run("read", "d", "--spot", "U9")).Talk.Said));
        Assert.Equal(ExitCodes.Refused, (await Run("read", "d", "--spot", "U4")).Code);
    }

    [Fact]
    public async Task Without_the_networks_the_dossier_stays_as_it_is()
    {
        await Begin();
        await Note("""{"kind":"spot","spot":"U1","picture":"board.png","box":[430,360,300,120]}""");
        File.AppendAllText(Path.Combine(folder["models"], "finder.onnx"), "x");
        File.Delete(Path.Combine(folder["models"], "reader.onnx"));
        var (code, talk) = await Run("read", "d", "--all");
        Assert.Equal((ExitCodes.Refused, 2), (code, talk.Said.Count));
        Assert.StartsWith("finder.onnx was altered", talk.Said[0], StringComparison.Ordinal);
        Assert.Empty(await Readings());
    }

    private async Task<(int Code, RecordedTalk Talk)> Run(params string[] arguments)
    {
        var talk = new RecordedTalk();
        return (await LidoffProgram.Run([.. arguments, "--workspace", folder["w"]], Seats.Of(talk, folder.Path) with { ProgramFolder = folder.Path }, TestContext.Current.CancellationToken), talk);
    }

    private async Task Begin()
    {
        await Run("new", "d");
        PaintedBars.Paint(folder["board.png"], 900, 700, 500, 400, 2);
        await Run("add", "d", folder["board.png"]);
    }

    private async Task Note(params string[] lines)
    {
        File.WriteAllLines(folder["lines.jsonl"], lines);
        var (code, talk) = await Run("note", "d", folder["lines.jsonl"]);
        Assert.True(code == ExitCodes.Done, string.Join('\n', talk.Said));
    }

    private async Task<List<JsonElement>> Entries() => [.. (await Run("entries", "d", "--json")).Talk.Out.Select(line => JsonDocument.Parse(line).RootElement)];

    private async Task<List<string?>> Readings() => [.. (await Entries()).Where(entry => entry.GetProperty("kind").GetString() == "reading").Select(entry => entry.GetProperty("id").GetString())];
}
