using System.Text;
using System.Text.Json;

namespace Lidoff.Tests.Commands;

/// <summary>Names, marks and files from people who mean harm, or whose tools do: nothing leaves its place, nothing runs, nothing is lost.</summary>
public sealed class HostileInputTests : IDisposable
{
    private const string Script = "<script>alert(1)</script>";
    private const string RightToLeft = "\u202Eevil\u2066gnp";

    private readonly CommandRun run = new();

    public void Dispose() => run.Dispose();

    [Fact]
    public async Task Marks_and_roles_stand_in_the_report_as_text()
    {
        await run.Of("new", "d", "--title", Script);
        var (code, talk) = await run.Note(
            Line(new { kind = "mark", spot = "U1", lines = new[] { Script, RightToLeft } }),
            Line(new { kind = "spot", spot = "U2", role = "\"><img src=x onerror=alert(1)>" }),
            Line(new { kind = "length", spot = "U1", what = "../../x", mm = 3.2, u_mm = 0.02, instrument = Script }),
            Line(new { kind = "claim", claim = "C1", text = "U1 says {mark:U1} and is {length:U1:../../x} <b>wide</b>." }));
        Assert.True(code == ExitCodes.Done, string.Join('\n', talk.Said));
        await run.Of("tell", "d", "--to", run["out"], "--as", "html,md,json");
        var html = File.ReadAllText(run["out/report.html"]);
        Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<img src=x", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<b>wide", html, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("&lt;script&gt;alert(1)&lt;/script&gt;", html, StringComparison.Ordinal);
        // A mark that turns the reading direction stays inside its own isolate.
        Assert.DoesNotContain("\u202E", html[..html.IndexOf("<bdi", StringComparison.Ordinal)], StringComparison.Ordinal);
        Assert.Equal(3, Directory.EnumerateFiles(run["out"], "*", SearchOption.AllDirectories).Count());
    }

    [Theory]
    [InlineData("{\"kind\":\"mark\",\"spot\":\"U1\",\"lines\":[\"LONG\"]}")]
    [InlineData("{\"kind\":\"mark\",\"spot\":\"LONG\",\"lines\":[\"A\"]}")]
    [InlineData("{\"kind\":\"spot\",\"spot\":\"U1\",\"role\":\"LONG\"}")]
    [InlineData("{\"kind\":\"claim\",\"claim\":\"C1\",\"text\":\"{part:LONG}\"}")]
    [InlineData("{\"kind\":\"LONG\",\"spot\":\"U1\"}")]
    [InlineData("{\"kind\":\"undo\",\"target\":\"LONG\"}")]
    public async Task Ten_thousand_characters_are_taken_or_refused_with_a_short_sentence(string line)
    {
        await run.Of("new", "d");
        var (code, talk) = await run.Note(line.Replace("LONG", new string('W', 10_000), StringComparison.Ordinal));
        Assert.Contains(code, new[] { ExitCodes.Done, ExitCodes.Refused });
        Assert.All(talk.Said, said => Assert.InRange(said.Length, 1, 1_000));
        if (code == ExitCodes.Refused) Assert.StartsWith("Line 1", talk.Said[0], StringComparison.Ordinal);
        Assert.Contains((await run.Of("tell", "d", "--to", run["out"])).Code, new[] { ExitCodes.Done, ExitCodes.Look });
        Assert.Equal(ExitCodes.Done, (await run.Of("verify", run.Workspace)).Code);
    }

    [Theory]
    [InlineData("../../x")]
    [InlineData("..")]
    [InlineData("a/b")]
    [InlineData(Script)]
    [InlineData(RightToLeft)]
    [InlineData("d\0")]
    public async Task A_dossiers_name_is_no_path(string name)
    {
        var (code, talk) = await run.Of("new", name);
        Assert.Equal(ExitCodes.Refused, code);
        Assert.Contains("cannot be a dossier's short name", Assert.Single(talk.Said), StringComparison.Ordinal);
        // What is said on a terminal neither turns its direction nor drives it.
        Assert.Equal(name == RightToLeft, talk.Said[0].Contains("[U+202E]", StringComparison.Ordinal));
        Assert.DoesNotContain(talk.Said[0], each => char.IsControl(each) || char.GetUnicodeCategory(each) == System.Globalization.UnicodeCategory.Format);
    }

    [Fact]
    public async Task A_long_name_of_a_dossier_is_refused_in_a_short_sentence()
    {
        var (code, talk) = await run.Of("new", new string('d', 10_000));
        Assert.Equal(ExitCodes.Refused, code);
        Assert.InRange(Assert.Single(talk.Said).Length, 1, 400);
    }

    [Fact]
    public async Task A_file_named_like_a_path_out_is_kept_under_its_hash()
    {
        await run.Of("new", "d");
        Directory.CreateDirectory(run["a/b"]);
        File.WriteAllText(run["x"], "outside");
        var (code, talk) = await run.Of("add", "d", run["a/b/../../x"], "--json");
        Assert.Equal(ExitCodes.Done, code);
        Assert.Equal("x", CommandRun.Only(talk).GetProperty("name").GetString());
        // A line brings no file, and a picture that it names and nobody added leads nowhere.
        var (noted, said) = await run.Note("""{"kind":"file","name":"../../x","sha256":"0000000000000000000000000000000000000000000000000000000000000000","bytes":1,"type":"image/png"}""", """{"kind":"spot","spot":"U1","picture":"../../x","point":[1,1]}""");
        Assert.Equal(ExitCodes.Look, noted);
        Assert.Equal("Line 1: a file comes in with \"lidoff add\", which also stores its content; a line cannot bring one.", said.Said[0]);
        await run.Of("tell", "d", "--to", run["out"]);
        Assert.Empty(Directory.EnumerateFileSystemEntries(run["out/pictures"]));
    }

    [Fact]
    public async Task A_truncated_picture_is_kept_and_said()
    {
        await run.Of("new", "d");
        File.WriteAllBytes(run["cut.png"], [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A, 0, 0, 0, 13, (byte)'I', (byte)'H', (byte)'D', (byte)'R', 0, 0]);
        var (code, talk) = await run.Of("add", "d", run["cut.png"], "--json");
        Assert.Equal(ExitCodes.Look, code);
        Assert.Contains("cut.png", Assert.Single(talk.Said), StringComparison.Ordinal);
        Assert.Equal("image/png", CommandRun.Only(talk).GetProperty("type").GetString());
        var (_, entries) = await run.Of("entries", "d", "--json");
        Assert.Equal(["format", "id", "kind", "chain", "seq", "targets"], CommandRun.Keys(JsonDocument.Parse(entries.Out[^1]).RootElement));
    }

    [Fact]
    public async Task Superseding_by_a_line_and_undoing_change_what_counts_and_lose_nothing()
    {
        await run.Of("new", "d");
        var (_, first) = await run.Note(
            """{"kind":"length","spot":"U1","what":"width","mm":3.2,"u_mm":0.02}""",
            """{"kind":"claim","claim":"C1","text":"{length:U1:width}"}""");
        var (code, second) = await run.Note(
            $$"""{"kind":"supersede","target":"{{CommandRun.Id(first.Out[0])[..12]}}","by_line":2}""",
            """{"kind":"length","spot":"U1","what":"width","mm":3.5,"u_mm":0.02}""");
        Assert.Equal(ExitCodes.Done, code);
        Assert.Equal("3.500 ± 0.020 mm", await Claimed());
        await run.Note($$"""{"kind":"undo","target":"{{CommandRun.Id(second.Out[0])}}"}""", $$"""{"kind":"undo","target":"{{CommandRun.Id(second.Out[1])}}"}""");
        Assert.Equal("3.200 ± 0.020 mm", await Claimed());
        var (_, entries) = await run.Of("entries", "d", "--json");
        var kinds = entries.Out.Select(line => JsonDocument.Parse(line).RootElement.GetProperty("kind").GetString()).Order(StringComparer.Ordinal);
        Assert.Equal(["claim", "dossier", "length", "length", "supersede", "undo", "undo"], kinds);
        var (lost, said) = await run.Note("""{"kind":"undo","target":"00000000000000"}""", """{"kind":"supersede","target":"00000000000000","by_line":9}""");
        Assert.Equal(ExitCodes.Refused, lost);
        Assert.All(said.Said.SkipLast(1), sentence => Assert.StartsWith("Line ", sentence, StringComparison.Ordinal));
    }

    private static string Line(object value) => Encoding.UTF8.GetString(JsonSerializer.SerializeToUtf8Bytes(value));

    private async Task<string> Claimed() => CommandRun.Only((await run.Of("claims", "d", "--json")).Talk).GetProperty("text").GetString()!;
}
