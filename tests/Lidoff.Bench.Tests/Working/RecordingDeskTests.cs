using System.Text;
using Lidoff.Bench.Tests.Looking;
using Lidoff.Bench.Working;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Kinds;
using Lidoff.Telling.Reporting;
using Lidoff.TestSupport;

namespace Lidoff.Bench.Tests.Working;

/// <summary>Recordings piece by piece: sent twice, out of order, too much, broken off, left by a killed program.</summary>
public sealed class RecordingDeskTests : IDisposable
{
    // A WebM's EBML header (RFC 9559), then what no decoder is asked about here.
    private static readonly byte[] Head = Convert.FromHexString("1A45DFA39F4286810142F7810142F2810442F381084282847765626D4287810442858102");
    private readonly FakeBench bench = new();
    private readonly string folder;

    public RecordingDeskTests()
    {
        bench.Set("d", "");
        folder = Path.Combine(bench.Workspace.Folder, "recordings");
    }

    public void Dispose() => bench.Dispose();

    [Fact]
    public async Task Pieces_become_one_file_with_its_tags_and_a_piece_that_comes_twice_counts_once()
    {
        using var desk = Desk();
        var (id, name) = desk.Begin(Facts(voice: true)).Value;
        Assert.Equal("V1", name);
        Assert.Equal(Head.Length, (await Send(desk, id, 0, Head)).Value);
        Assert.Equal(Head.Length + 3, (await Send(desk, id, Head.Length, "abc"u8.ToArray())).Value);
        // The answer was lost: the same again, and half of it with something new behind.
        Assert.Equal(Head.Length + 3, (await Send(desk, id, Head.Length, "abc"u8.ToArray())).Value);
        Assert.Equal(Head.Length + 5, (await Send(desk, id, Head.Length + 1, "bcde"u8.ToArray())).Value);
        Assert.Equal("A piece of the recording is missing: 41 bytes are here and the next piece begins after 99 bytes. What came until then is kept.", Say(await Send(desk, id, 99, [1])));
        var kept = (await desk.End(id)).Value;
        Assert.Equal([.. Head, .. "abcde"u8], File.ReadAllBytes(bench.Workspace.Files.PathOf(kept.Sha256)));
        Assert.Equal(new RecordingSighting("V1", kept.Sha256, true, false, "2x", "ring", "cam"), Assert.Single(Stored<RecordingSighting>()));
        Assert.Equal(("V1.webm", "video/webm", "recording"), Assert.Single(Stored<FileAdded>().Select(file => (file.Name, file.Type, file.From))));
        Assert.Empty(Directory.GetFiles(folder));
        Assert.Equal(RecordingSentences.Over.Say, Say(await Send(desk, id, 0, [1])));
        Assert.Equal(RecordingSentences.Over.Say, Assert.Single((await desk.End(id)).Faults).Say);
        // Its name is not given again, nor is one that moments lean on.
        bench.Set("d", "", """{"kind":"moment","recording":"V2","second":1}""");
        Assert.Equal("V3", desk.Begin(Facts()).Value.Recording);
        Assert.Equal("V4", desk.Begin(Facts()).Value.Recording);
    }

    [Fact]
    public async Task What_is_over_the_cap_is_refused_and_the_rest_is_kept()
    {
        using var desk = Desk(mostBytes: 50);
        var (id, _) = desk.Begin(Facts()).Value;
        Assert.True((await Send(desk, id, 0, Head)).Ok);
        Assert.Equal("The recording has reached the 50 bytes that one may have and was ended; all of it is kept. Start another one to go on.", Say(await Send(desk, id, Head.Length, new byte[30])));
        Assert.Equal(Head, File.ReadAllBytes(bench.Workspace.Files.PathOf((await desk.End(id)).Value.Sha256)));
    }

    [Fact]
    public async Task Nothing_recorded_is_nothing_kept()
    {
        using var desk = Desk();
        Assert.Equal("Nothing was recorded; nothing is kept of it.", Assert.Single((await desk.End(desk.Begin(Facts()).Value.Id)).Faults).Say);
        Assert.Empty(Stored<FileAdded>());
        Assert.Empty(Directory.GetFiles(folder));
        Assert.Contains("There is no dossier", Assert.Single(desk.Begin(Facts() with { Dossier = "none" }).Faults).Say, StringComparison.Ordinal);
        for (var i = 0; i < 8; i++) Assert.True(desk.Begin(Facts()).Ok);
        Assert.Equal("No more than 8 recordings can run at once; end one.", Assert.Single(desk.Begin(Facts()).Faults).Say);
    }

    [Fact]
    public async Task What_a_killed_program_was_recording_is_kept_by_the_next_start_once()
    {
        // A killed program leaves its two files and no lock; they are put there by hand as it would have left them.
        Directory.CreateDirectory(folder);
        File.WriteAllBytes(Path.Combine(folder, "x.part"), [.. Head, 1, 2, 3]);
        File.WriteAllText(Path.Combine(folder, "x.json"), """{"Dossier":"d","Recording":"V7","Voice":true,"Ending":"webm","Zoom":"","Light":"","Camera":"cam"}""");
        // One of a dossier that is not here, and one whose description is no JSON, stay for somebody to look at.
        File.WriteAllText(Path.Combine(folder, "y.json"), "half a descr");
        File.WriteAllBytes(Path.Combine(folder, "y.part"), Head);
        File.WriteAllText(Path.Combine(folder, "z.json"), """{"Dossier":"gone","Recording":"V1","Voice":false,"Ending":"webm","Zoom":"","Light":"","Camera":""}""");
        File.WriteAllBytes(Path.Combine(folder, "z.part"), Head);
        using (var desk = Desk()) await desk.Recover();
        var kept = Assert.Single(Stored<RecordingSighting>());
        Assert.Equal(("V7", true, true, "cam"), (kept.Recording, kept.Voice, kept.BrokeOff, kept.Camera));
        Assert.Equal([.. Head, 1, 2, 3], File.ReadAllBytes(bench.Workspace.Files.PathOf(kept.File)));
        Assert.Equal(["y.json", "y.part", "z.json", "z.part"], Directory.GetFiles(folder).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        // Killed once more, right before it cleared away: it is not said twice.
        File.WriteAllBytes(Path.Combine(folder, "x.part"), [.. Head, 1, 2, 3]);
        File.WriteAllText(Path.Combine(folder, "x.json"), """{"Dossier":"d","Recording":"V7","Voice":true,"Ending":"webm","Zoom":"","Light":"","Camera":"cam"}""");
        using (var desk = Desk()) await desk.Recover();
        Assert.Single(Stored<RecordingSighting>());
        Assert.Single(Stored<FileAdded>());
        Assert.False(File.Exists(Path.Combine(folder, "x.part")));
    }

    [Fact]
    public async Task A_sweep_that_runs_is_the_one_that_is_asked_for_and_letting_go_waits_for_it()
    {
        Directory.CreateDirectory(folder);
        File.WriteAllBytes(Path.Combine(folder, "x.part"), [.. Head, 1, 2, 3]);
        File.WriteAllText(Path.Combine(folder, "x.json"), """{"Dossier":"d","Recording":"V7","Voice":true,"Ending":"webm","Zoom":"","Light":"","Camera":"cam"}""");
        using var begun = new SemaphoreSlim(0);
        using var go = new SemaphoreSlim(0);
        bench.BeforeNote = () =>
        {
            begun.Release();
            go.Wait();
        };
        var desk = Desk();
        var sweep = desk.Recover();
        Assert.True(await begun.WaitAsync(TimeSpan.FromSeconds(20)));
        Assert.Same(sweep, desk.Recover());
        var closing = Task.Run(desk.Dispose);
        // It cannot be over: the disk still holds the sweep back.
        Assert.NotSame(closing, await Task.WhenAny(closing, Task.Delay(200)));
        go.Release();
        await closing.WaitAsync(TimeSpan.FromSeconds(20));
        Assert.True(sweep.IsCompletedSuccessfully);
        Assert.Equal("V7", Assert.Single(Stored<RecordingSighting>()).Recording);
        Assert.Same(sweep, desk.Recover());
    }

    [Fact]
    public async Task What_another_program_is_recording_is_left_to_it_and_an_orderly_end_keeps_it()
    {
        var living = Desk();
        var (id, _) = living.Begin(Facts()).Value;
        Assert.True((await Send(living, id, 0, Head)).Ok);
        using (var other = Desk()) await other.Recover();
        Assert.Empty(Stored<RecordingSighting>());
        living.Dispose();
        Assert.True(Assert.Single(Stored<RecordingSighting>()).BrokeOff);
        Assert.Empty(Directory.GetFiles(folder));
    }

    [Fact]
    public async Task A_report_names_a_recording_and_leaves_it_at_home()
    {
        using var desk = Desk();
        var (id, _) = desk.Begin(Facts(voice: true)).Value;
        Assert.True((await Send(desk, id, 0, [.. Head, .. "the voice itself"u8])).Ok);
        Assert.True((await desk.End(id)).Ok);
        bench.Set("d", "", """{"kind":"spot","spot":"U1","role":"radio","picture":"V1.webm","point":[1,1]}""");
        var to = Path.Combine(bench.Workspace.Folder, "report");
        Assert.NotEmpty(bench.View("d", dossier => ReportFolder.Write(dossier, to, ReportFolder.Forms, _ => { }).Value)!);
        var written = Directory.GetFiles(to, "*", SearchOption.AllDirectories);
        Assert.NotEmpty(written);
        Assert.All(written, file => Assert.DoesNotContain("the voice itself", Encoding.Latin1.GetString(File.ReadAllBytes(file)), StringComparison.Ordinal));
        Assert.All(written, file => Assert.Contains(Path.GetExtension(file), ReportFolder.Forms.Select(form => "." + form)));
    }

    private RecordingDesk Desk(long mostBytes = 1 << 20) => new(bench, folder, new SteppingClock(), mostBytes);

    private static RecordingFacts Facts(bool voice = false) => new("d", "", voice, "webm", "2x", "ring", "cam");

    private static Task<Outcome<long>> Send(RecordingDesk desk, string id, long at, byte[] piece) => desk.Append(id, at, new MemoryStream(piece), CancellationToken.None);

    private static string Say(Outcome<long> outcome) => Assert.Single(outcome.Faults).Say;

    private List<T> Stored<T>()
        where T : class => bench.View("d", dossier => dossier.Session.View.Live<T>().Select(each => each.Value).ToList())!;
}
