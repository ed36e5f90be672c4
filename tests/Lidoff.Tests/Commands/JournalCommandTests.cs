using System.Text;
using System.Text.Json;
using Lidoff.TestSupport;

namespace Lidoff.Tests.Commands;

/// <summary>The store-backed commands as a user calls them: stdout to the letter of docs/contracts.md, sentences, exit codes.</summary>
public sealed class JournalCommandTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task The_lines_of_the_contracts_are_taken_as_they_stand_there()
    {
        await Run("new", "d");
        var (code, talk) = await Note(
            """{"kind":"mark","spot":"U3","specimen":"A","lines":["N52832","QFAA?0"],"instrument":"eye","by":"…","at":"2026-03-02T10:15:00Z"}""",
            """{"kind":"body","spot":"U3","mm":[6.01,6.00],"u_mm":0.02}""",
            """{"kind":"touch","a":"U3.13","b":"GND","beep":true,"threshold_ohm":40}""");
        Assert.Equal(ExitCodes.Done, code);
        Assert.Equal(["mark", "body", "touch"], talk.Out.Select(line => JsonDocument.Parse(line).RootElement.GetProperty("kind").GetString()));
        Assert.All(talk.Out, line => Assert.Matches("^\\{\"format\":1,\"id\":\"[0-9a-f]{64}\",\"kind\":\"[a-z]+\"\\}$", line));
        var mark = Id(talk.Out[0]);
        var (again, _) = await Note(
            $$"""{"kind":"supersede","target":"{{mark}}","by_line":2}""",
            """{"kind":"mark","spot":"U3","lines":["N52832","QFAAE0"]}""",
            """{"kind":"decide","spot":"U3","accept":"nRF52832","why":"read under raking light"}""");
        Assert.Equal(ExitCodes.Done, again);
    }

    [Fact]
    public async Task One_bad_line_stands_in_its_place_and_the_rest_is_done()
    {
        await Run("new", "d");
        var (code, talk) = await Note("""{"kind":"body","spot":"U1","mm":[3,3]}""", """{"kind":"bogus"}""", """{"kind":"body","spot":"U2","mm":[0,"x"]}""", "not json");
        Assert.Equal(ExitCodes.Look, code);
        Assert.Equal(4, talk.Out.Count);
        Assert.StartsWith("""{"format":1,"id":null,"error":{"where":"line 2, kind","expected":"one of """, talk.Out[1], StringComparison.Ordinal);
        Assert.Contains("Line 3: \"mm\" should be two numbers [a, b], each a number above 0, but here it is [0,\"x\"].", talk.Said);
        Assert.Equal("1 noted, 3 refused; the refused lines are above and nothing of them was stored.", talk.Said[^1]);
        Assert.Single(await Entries(), line => line.Contains("\"kind\":\"body\"", StringComparison.Ordinal));
    }

    [Fact]
    public async Task All_bad_lines_are_a_refused_whole()
    {
        await Run("new", "d");
        Assert.Equal(ExitCodes.Refused, (await Note("""{"kind":"bogus"}""")).Code);
    }

    [Theory]
    [InlineData(ExitCodes.Refused, "\"Bad Name\" cannot be a dossier's short name: use 1 to 64 of a-z, 0-9, - and _, beginning with a letter or digit.", "new", "Bad Name")]
    [InlineData(ExitCodes.Refused, "There is a dossier \"d\" already; nothing was changed.", "new", "d")]
    [InlineData(ExitCodes.Refused, "There is no dossier \"e\" in this workspace; there is d.", "entries", "e")]
    [InlineData(ExitCodes.Look, "There is no file 'gone.jpg'.", "add", "d", "gone.jpg")]
    [InlineData(ExitCodes.Refused, "There is no file 'gone.jsonl'.", "note", "d", "gone.jsonl")]
    [InlineData(ExitCodes.Usage, "The report cannot be written as pdf yet; html, md and json can.", "tell", "d", "--to", "out", "--as", "pdf")]
    [InlineData(ExitCodes.Usage, "lidoff capture is promised and not built yet; `lidoff --help` lists what works today.", "capture", "x.csv")]
    [InlineData(ExitCodes.Usage, "FILE is missing: files to add.", "add", "d")]
    [InlineData(ExitCodes.Usage, "DOSSIER is missing: short name of the dossier.", "add")]
    [InlineData(ExitCodes.Usage, "Unrecognized command or argument 'nmae'.", "nmae")]
    [InlineData(ExitCodes.Usage, "--port wants a number from 0 to 65535.", "bench", "--port", "70000")]
    [InlineData(ExitCodes.Usage, "--watch and --into go together: the folder, and the dossier its files go into.", "bench", "--watch", "card")]
    [InlineData(ExitCodes.Refused, "There is no dossier \"e\" in this workspace; there is d.", "bench", "--no-browser", "--watch", ".", "--into", "e")]
    public async Task A_wrong_call_says_what_is_wrong(int expected, string sentence, params string[] arguments)
    {
        await Run("new", "d");
        var (code, talk) = await Run(arguments);
        Assert.Equal(expected, code);
        Assert.Contains(sentence, talk.Said);
    }

    [Theory]
    [InlineData("--port is given without its value.", "bench", "--port")]
    [InlineData("--port wants a number; “--no-browser” is none that it takes.", "bench", "--port", "--no-browser")]
    [InlineData("--port wants a number; “abc” is none that it takes.", "demo", "--port", "abc")]
    [InlineData("--port wants a number; “99999999999” is none that it takes.", "demo", "--port", "99999999999")]
    [InlineData("--seed wants a number; “abc” is none that it takes.", "reckon", "--seed", "abc")]
    [InlineData("--watch is given without its value.", "bench", "--watch")]
    [InlineData("--box is given without its value.", "read", "top.jpg", "--box")]
    [InlineData("--as is given without its value.", "tell", "d", "--to", "out", "--as")]
    public async Task An_option_without_its_value_is_asked_for_it(string sentence, params string[] arguments)
    {
        var talk = new RecordedTalk();
        Assert.Equal(ExitCodes.Usage, await LidoffProgram.Run(arguments, Seats.Of(talk, folder.Path), TestContext.Current.CancellationToken));
        Assert.Contains(sentence, talk.Said);
    }

    [Fact]
    public async Task An_empty_file_is_kept_and_said()
    {
        await Run("new", "d");
        File.WriteAllText(folder["card.csv"], "");
        var (code, talk) = await Run("add", "d", folder["card.csv"]);
        Assert.Equal(ExitCodes.Look, code);
        Assert.Equal("“card.csv” is empty (0 bytes); it is kept as it is, and there is nothing in it to look at.", Assert.Single(talk.Said));
        Assert.Single(await Entries(), line => line.Contains("\"kind\":\"file\"", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_command_that_only_reads_makes_no_workspace()
    {
        var (code, talk) = await Run("entries", "d");
        Assert.Equal(ExitCodes.Refused, code);
        Assert.False(Directory.Exists(folder["w"]));
        Assert.Equal($"There is no workspace in {folder["w"]} yet; `lidoff new DOSSIER` begins one.", Assert.Single(talk.Said));
    }

    [Fact]
    public async Task Files_are_recognised_by_content_and_hostile_names_lead_nowhere()
    {
        await Run("new", "d");
        var names = new[] { "<script>alert(1)<script>.csv", "\u202Egnp.exe", new string('n', 200) + ".txt" };
        foreach (var name in names) File.WriteAllText(folder[name], "time,current\n0,1\n1,2\n");
        File.WriteAllBytes(folder["picture.png"], [0xFF, 0xD8, 0xFF, 0xE0, 0, 0x10, .. "JFIF\0"u8, 1, 1, 0, 0, 1, 0, 1, 0, 0]);
        var (code, talk) = await Run(["add", "d", .. names.Select(name => folder[name]), folder["picture.png"], "--json"]);
        // The broken picture is kept and said, so there is something to look at.
        Assert.Equal(ExitCodes.Look, code);
        Assert.Equal(4, talk.Out.Count);
        var types = talk.Out.Select(line => JsonDocument.Parse(line).RootElement.GetProperty("type").GetString()).ToList();
        Assert.Equal("image/jpeg", types[3]);
        Assert.Contains("csv", types[0], StringComparison.Ordinal);
        Assert.Equal(["format", "id", "kind", "name", "sha256", "bytes", "type"], JsonDocument.Parse(talk.Out[0]).RootElement.EnumerateObject().Select(each => each.Name));
        var stored = Directory.EnumerateFiles(Path.Combine(folder["w"], "files"), "*", SearchOption.AllDirectories).Select(Path.GetFileName);
        Assert.All(stored, name => Assert.Matches("^[0-9a-f]{62}$", name!));
        Assert.Equal(ExitCodes.Done, (await Run("verify", folder["w"], "--json")).Code);
    }

    [Fact]
    public async Task Verify_names_what_was_changed_behind_its_back()
    {
        await Run("new", "d");
        File.WriteAllText(folder["a.txt"], "one");
        await Run("add", "d", folder["a.txt"]);
        var stored = Directory.EnumerateFiles(Path.Combine(folder["w"], "files"), "*", SearchOption.AllDirectories).Single();
        File.WriteAllText(stored, "two");
        var (code, talk) = await Run("verify", folder["w"], "--json");
        Assert.Equal(ExitCodes.Look, code);
        var found = JsonDocument.Parse(Assert.Single(talk.Out)).RootElement;
        Assert.Equal(["format", "ok", "entries", "files", "erased", "faults"], found.EnumerateObject().Select(each => each.Name));
        Assert.False(found.GetProperty("ok").GetBoolean());
        Assert.Equal("Its content is not what its hash says: it was changed after it was stored.", found.GetProperty("faults")[0].GetProperty("say").GetString());
    }

    [Fact]
    public async Task Erasing_takes_the_file_away_and_what_leant_on_it_says_so()
    {
        await Run("new", "d");
        File.WriteAllText(folder["a.txt"], "private");
        var (_, added) = await Run("add", "d", folder["a.txt"], "--json");
        var (_, noted) = await Note(
            """{"kind":"length","spot":"U1","what":"width","mm":3.2,"u_mm":0.02}""",
            """{"kind":"claim","claim":"C1","text":"U1 is {length:U1:width} wide."}""");
        Assert.Equal(ExitCodes.Done, (await Run("tell", "d", "--to", folder["out"], "--publish")).Code);
        await Note($$"""{"kind":"erase","target":"{{Id(added.Out[0])}}"}""", $$"""{"kind":"erase","target":"{{Id(noted.Out[0])}}"}""");
        Assert.Empty(Directory.EnumerateFiles(Path.Combine(folder["w"], "files"), "*", SearchOption.AllDirectories));
        var (code, claims) = await Run("claims", "d", "--json");
        Assert.Equal(ExitCodes.Look, code);
        Assert.Contains("\"state\":\"lost\"", Assert.Single(claims.Out), StringComparison.Ordinal);
        Assert.Equal("C1 [E0, lost, support erased] U1 is (unknown) wide.", Assert.Single((await Run("claims", "d")).Talk.Out));
        var (verified, talk) = await Run("verify", folder["w"], "--json");
        Assert.Equal(ExitCodes.Done, verified);
        Assert.Contains("\"erased\":2", Assert.Single(talk.Out), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_claim_that_was_published_knows_when_its_number_moves()
    {
        await Run("new", "d");
        var (_, noted) = await Note(
            """{"kind":"length","spot":"U1","what":"width","mm":3.2,"u_mm":0.02}""",
            """{"kind":"claim","claim":"C1","text":"U1 is {length:U1:width} wide."}""");
        Assert.Equal(ExitCodes.Done, (await Run("tell", "d", "--to", folder["out"], "--publish")).Code);
        await Note($$"""{"kind":"undo","target":"{{Id(noted.Out[0])}}"}""", """{"kind":"length","spot":"U1","what":"width","mm":3.5,"u_mm":0.02}""");
        var (code, claims) = await Run("claims", "d", "--json");
        Assert.Equal(ExitCodes.Look, code);
        var claim = JsonDocument.Parse(Assert.Single(claims.Out)).RootElement;
        Assert.Equal(["format", "claim", "text", "values", "grade", "state", "rests_on"], claim.EnumerateObject().Select(each => each.Name));
        Assert.Equal("outside", claim.GetProperty("state").GetString());
        Assert.Equal("U1 is 3.500 ± 0.020 mm wide.", claim.GetProperty("text").GetString());
    }

    [Theory]
    [InlineData("new")]
    [InlineData("add")]
    [InlineData("note")]
    [InlineData("entries")]
    [InlineData("claims")]
    [InlineData("tell")]
    [InlineData("verify")]
    [InlineData("name")]
    [InlineData("date")]
    [InlineData("measure")]
    [InlineData("reckon")]
    [InlineData("catalogue")]
    [InlineData("bench")]
    [InlineData("demo")]
    public void Every_command_has_one_example_that_calls_it(string name)
    {
        var command = Lidoff.Commands.CommandTable.Find(name);
        Assert.NotNull(command);
        Assert.StartsWith(name + " ", command.Example, StringComparison.Ordinal);
        Assert.EndsWith(".", command.Says, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_nobody_foresaw_leaves_a_report_and_exit_4()
    {
        var talk = new RecordedTalk { Input = new BrokenStream() };
        await Run("new", "d");
        var code = await LidoffProgram.Run(["note", "d", "-", "--workspace", folder["w"]], Seats.Of(talk, folder.Path), CancellationToken.None);
        Assert.Equal(ExitCodes.OurFault, code);
        var report = Assert.Single(Directory.EnumerateFiles(Path.Combine(folder["default"], "faults")));
        Assert.Contains("the wire was cut", File.ReadAllText(report), StringComparison.Ordinal);
        Assert.StartsWith("Lidoff made a mistake: the wire was cut", Assert.Single(talk.Said), StringComparison.Ordinal);
    }

    private async Task<(int Code, RecordedTalk Talk)> Run(params string[] arguments)
    {
        var talk = new RecordedTalk();
        var whole = arguments[0] is "verify" or "capture" or "nmae" ? arguments : [.. arguments, "--workspace", folder["w"]];
        return (await LidoffProgram.Run(whole, Seats.Of(talk, folder.Path), TestContext.Current.CancellationToken), talk);
    }

    private async Task<(int Code, RecordedTalk Talk)> Note(params string[] lines)
    {
        var talk = new RecordedTalk { Input = new MemoryStream(Encoding.UTF8.GetBytes(string.Join('\n', lines))) };
        return (await LidoffProgram.Run(["note", "d", "-", "--json", "--workspace", folder["w"]], Seats.Of(talk, folder.Path), TestContext.Current.CancellationToken), talk);
    }

    private async Task<List<string>> Entries() => (await Run("entries", "d", "--json")).Talk.Out;

    private static string Id(string line) => JsonDocument.Parse(line).RootElement.GetProperty("id").GetString()!;

    /// <summary>Fails in a way no reader expects.</summary>
    private sealed class BrokenStream : MemoryStream
    {
        public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException("the wire was cut");

        public override int Read(Span<byte> buffer) => throw new NotSupportedException("the wire was cut");
    }
}
