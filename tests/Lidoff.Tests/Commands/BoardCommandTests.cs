using System.Text.Json;

namespace Lidoff.Tests.Commands;

/// <summary>quarrels and moves, called like a user: keys to the letter of docs/contracts.md, exit codes, sentences.</summary>
public sealed class BoardCommandTests : IDisposable
{
    private readonly CommandRun run = new();

    public void Dispose() => run.Dispose();

    [Fact]
    public async Task Quarrels_are_told_with_the_keys_of_the_contracts_and_ask_for_a_look()
    {
        await run.Of("new", "d");
        Assert.Equal(ExitCodes.Done, (await run.Of("quarrels", "d", "--json")).Code);
        var noted = await run.Note(
            """{"kind":"length","spot":"S1","what":"width","mm":3.02,"u_mm":0.02}""",
            """{"kind":"length","spot":"S1","what":"width","mm":3.20,"u_mm":0.01}""");
        var (code, talk) = await run.Of("quarrels", "d", "--json");
        Assert.Equal(ExitCodes.Look, code);
        var quarrel = CommandRun.Only(talk);
        Assert.Equal(["format", "quarrel", "rule", "members", "say", "diagnoses", "settle"], CommandRun.Keys(quarrel));
        Assert.Equal("Q1", quarrel.GetProperty("quarrel").GetString());
        Assert.Equal(noted.Talk.Out.Select(CommandRun.Id).Order(StringComparer.Ordinal), quarrel.GetProperty("members").EnumerateArray().Select(id => id.GetString()!));
        Assert.Equal(["drop", "p"], CommandRun.Keys(quarrel.GetProperty("diagnoses")[0]));
        Assert.Equal(1, quarrel.GetProperty("diagnoses").EnumerateArray().Sum(each => each.GetProperty("p").GetDouble()));
        Assert.Equal("""{"measure":"measure width of S1 once more with a calliper","minutes":2}""", quarrel.GetProperty("settle").GetRawText());
        Assert.Equal("Q1 (lengths apart) width of S1 cannot be 3.020 ± 0.020 mm and 3.200 ± 0.010 mm. To settle it: measure width of S1 once more with a calliper.", Assert.Single((await run.Of("quarrels", "d")).Talk.Out));
    }

    [Fact]
    public async Task Moves_are_told_with_the_keys_of_the_contracts()
    {
        await run.Of("new", "d");
        await run.Note(
            """{"kind":"question","question":"Q1","text":"What is U3?","ties":["part:U3"]}""",
            """{"kind":"question","question":"Q2","text":"How heavy is it?","ties":["mass:A"]}""",
            """{"kind":"spot","spot":"U3","class":"chip"}""",
            """{"kind":"mark","spot":"U3","lines":["3028??"]}""");
        var (code, talk) = await run.Of("moves", "d", "--for", "Q1", "--json");
        Assert.Equal(ExitCodes.Done, code);
        Assert.NotEmpty(talk.Out);
        Assert.All(talk.Out, line =>
        {
            var move = JsonDocument.Parse(line).RootElement;
            Assert.Equal(["format", "question", "move", "bits", "minutes", "risk", "why"], CommandRun.Keys(move));
            Assert.Equal("What is U3?", move.GetProperty("question").GetString());
            Assert.Contains(move.GetProperty("risk").GetString(), new[] { "none", "may damage", "destroys" });
            Assert.True(move.GetProperty("bits").GetDouble() > 0 && move.GetProperty("minutes").GetDouble() > 0);
        });
        Assert.Equal(
            """{"format":1,"question":"How heavy is it?","move":"weigh A","bits":null,"minutes":1,"risk":"none","why":"There is no mass of A yet. How much it would tell is not reckoned yet."}""",
            Assert.Single((await run.Of("moves", "d", "--for", "Q2", "--json")).Talk.Out));
        Assert.Equal(talk.Out.Count + 1, (await run.Of("moves", "d", "--json")).Talk.Out.Count);
    }

    [Fact]
    public async Task A_question_that_nobody_asked_is_refused_with_those_that_stand_on_the_board()
    {
        await run.Of("new", "d");
        Assert.Equal("There is no question 'Q9': nobody has put a question on the board yet (kind \"question\").", Assert.Single((await run.Of("moves", "d", "--for", "Q9")).Talk.Said));
        await run.Note("""{"kind":"question","question":"Q1","text":"Who made it?"}""");
        var (code, talk) = await run.Of("moves", "d", "--for", "Q9", "--json");
        Assert.Equal((ExitCodes.Refused, "There is no question 'Q9'; on the board are Q1."), (code, Assert.Single(talk.Said)));
        Assert.Equal(ExitCodes.Refused, (await run.Of("moves", "gone", "--json")).Code);
        Assert.Equal(ExitCodes.Refused, (await run.Of("quarrels", "gone", "--json")).Code);
    }
}
