using System.Diagnostics;
using System.Globalization;
using System.Security.Cryptography;
using System.Text.Json;
using System.Text.RegularExpressions;
using Lidoff.Seeing.Rendering;
using Lidoff.TestSupport;

namespace Lidoff.Tests;

/// <summary>
/// The documented thread (docs/thread.md) on a board rendered here, where the truth is known: one picture from file to sentence, and
/// every figure of the report back to the picture. The script runs the built program, as a person does.
/// </summary>
public sealed partial class ThreadTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Every_figure_of_the_report_leads_back_to_the_picture()
    {
        Render();
        var output = Run("bash", Path.Combine(Root, "docs", "thread", "run.sh"), Program, folder["board.png"], folder["notes.jsonl"], folder["out"]);

        using var claim = JsonDocument.Parse(output.Split('\n').First(line => line.StartsWith("{\"format\":1,\"claim\"", StringComparison.Ordinal)));
        var length = claim.RootElement.GetProperty("values").GetProperty("length:U1:length");
        Assert.InRange(6.0, length.GetProperty("interval90")[0].GetDouble(), length.GetProperty("interval90")[1].GetDouble());
        Assert.Equal("nRF52832", claim.RootElement.GetProperty("values").GetProperty("part:U1").GetProperty("name").GetString());

        var html = File.ReadAllText(folder[Path.Combine("out", "report", "report.html")]);
        var anchors = Ids().Matches(html).Select(match => match.Groups[1].Value).ToList();
        Assert.Equal(anchors.Distinct(), anchors);
        var values = Values().Matches(html).Select(match => match.Groups[1].Value).ToList();
        Assert.True(values.Count >= 4);
        Assert.All(Anchors().Matches(html).Select(match => match.Groups[1].Value), target => Assert.Contains(target, anchors));
        // Each printed value's because names at least one entry, and the length's leads to the picture's file.
        foreach (var value in values) Assert.Contains("href=\"#entry-", Block(html, value), StringComparison.Ordinal);
        var entries = EntryLinks().Matches(Block(html, values.First(value => value.Contains("length", StringComparison.Ordinal)))).Select(match => match.Groups[1].Value);
        Assert.Contains(entries, entry => Block(html, entry).Contains("href=\"pictures/", StringComparison.Ordinal));
        Assert.All(Files().Matches(html).Select(match => match.Groups[1].Value), file => Assert.True(File.Exists(folder[Path.Combine("out", "report", file)]), file));
        // The printed hash is that of the original, not of the copy that lies beside the report.
        var hash = Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(folder["board.png"])));
        Assert.All(Hashes().Matches(html).Select(match => match.Groups[1].Value), printed => Assert.Equal(hash, printed));
        Assert.True(Hashes().Count(html) >= 2);
    }

    [Fact]
    public async Task The_same_input_with_the_same_clock_and_writers_gives_the_same_bytes()
    {
        Render();
        foreach (var run in new[] { "a", "b" })
        {
            var talk = new RecordedTalk();
            var writers = 0;
            // One seat a run: its clock steps and its writers follow each other in the same order both times.
            var seat = Seats.Of(talk, folder.Path) with { Writers = () => Seeds.Of($"writer {++writers}") };
            foreach (var arguments in (string[][])[["new", "thread"], ["add", "thread", folder["board.png"]], ["note", "thread", folder["notes.jsonl"]], ["tell", "thread", "--to", folder[run + "-report"], "--as", "html,md,json"]])
            {
                var code = await LidoffProgram.Run([.. arguments, "--workspace", folder[run]], seat, TestContext.Current.CancellationToken);
                Assert.True(code == ExitCodes.Done, string.Join('\n', talk.Said));
            }
        }

        var files = Directory.EnumerateFiles(folder["a-report"], "*", SearchOption.AllDirectories).Select(file => Path.GetRelativePath(folder["a-report"], file)).Order(StringComparer.Ordinal).ToList();
        Assert.Equal(4, files.Count);
        Assert.All(files, file => Assert.Equal(File.ReadAllBytes(Path.Combine(folder["a-report"], file)), File.ReadAllBytes(Path.Combine(folder["b-report"], file))));
    }

    [Fact]
    public async Task Other_writers_change_the_ids_and_nothing_else()
    {
        var reports = new List<string>();
        foreach (var run in new[] { "a", "b" })
        {
            await Command(run, "new", "d");
            File.WriteAllText(folder["lines"], """
                {"kind":"length","spot":"U1","what":"width","mm":3.2,"u_mm":0.02,"instrument":"calliper"}
                {"kind":"claim","claim":"C1","text":"U1 is {length:U1:width} wide."}
                """);
            await Command(run, "note", "d", folder["lines"]);
            await Command(run, "tell", "d", "--to", folder[run + "-report"], "--as", "md");
            reports.Add(Hex().Replace(File.ReadAllText(folder[run + "-report/report.md"]), "ID"));
        }

        Assert.Equal(reports[0], reports[1]);
    }

    /// <summary>The picture and what a person would note of it, clicked at the true places.</summary>
    private void Render()
    {
        var board = SceneRenderer.Render(Brindle.MainTop());
        using (var file = File.Create(folder["board.png"])) board.WritePng(file);
        var chip = board.Parts.Single(part => part.Part.Spot == "U1");
        var (from, to) = (board.Outline[0], board.Outline[1]);
        File.WriteAllLines(folder["notes.jsonl"],
        [
            Text($$"""{"kind":"scale","picture":"board.png","from":[{{from.X}},{{from.Y}}],"to":[{{to.X}},{{to.Y}}],"length_mm":34,"u_mm":0.03}"""),
            Text($$"""{"kind":"spot","spot":"U1","picture":"board.png","point":[{{chip.Left.X}},{{chip.Left.Y}}],"role":"radio"}"""),
            Text($$"""{"kind":"length","picture":"board.png","spot":"U1","what":"length","from":[{{chip.Left.X}},{{chip.Left.Y}}],"to":[{{chip.Right.X}},{{chip.Right.Y}}],"height_mm":0.85}"""),
            """{"kind":"mark","spot":"U1","lines":["N52832","QFAA?0"]}""",
            """{"kind":"claim","claim":"C1","text":"U1 is {part:U1}, {length:U1:length} long."}""",
        ]);
    }

    private static string Root { get; } = FindRoot();

    private static string Program { get; } = Path.Combine(Root, "artifacts", "bin", "Lidoff", "debug", "lidoff");

    private async Task Command(string workspace, params string[] arguments)
    {
        var talk = new RecordedTalk();
        var code = await LidoffProgram.Run([.. arguments, "--workspace", folder[workspace]], Seats.Of(talk, folder.Path), TestContext.Current.CancellationToken);
        Assert.True(code == ExitCodes.Done, string.Join('\n', talk.Said));
    }

    private static string Run(string program, params string[] arguments)
    {
        var start = new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true };
        using var process = Process.Start(start)!;
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, errors.Result);
        return output;
    }

    private static string Block(string html, string anchor)
    {
        var at = html.IndexOf($"id=\"{anchor}\"", StringComparison.Ordinal);
        return html[at..html.IndexOf("</div>", at, StringComparison.Ordinal)];
    }

    private static string FindRoot()
    {
        var at = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(at, "Lidoff.slnx"))) at = Path.GetDirectoryName(at)!;
        return at;
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    [GeneratedRegex(" id=\"([^\"]+)\"")]
    private static partial Regex Ids();

    [GeneratedRegex("href=\"#([^\"]+)\"")]
    private static partial Regex Anchors();

    [GeneratedRegex("class=\"value\" href=\"#([^\"]+)\"")]
    private static partial Regex Values();

    [GeneratedRegex("href=\"#(entry-[^\"]+)\"")]
    private static partial Regex EntryLinks();

    [GeneratedRegex("href=\"(pictures/[^\"]+)\"")]
    private static partial Regex Files();

    [GeneratedRegex("SHA-256[^<]*<bdi class=\"mark\">([0-9a-f]{64})<")]
    private static partial Regex Hashes();

    [GeneratedRegex("[0-9a-f]{12,64}")]
    private static partial Regex Hex();
}
