using Lidoff.Bench.Data;
using Lidoff.Bench.Hosting;
using Lidoff.Bench.Tests.Looking;
using Lidoff.Bench.Working;
using Lidoff.Evidence.Working;
using Lidoff.Naming.Ranking;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Reading.Networks;
using Lidoff.TestSupport;

namespace Lidoff.Bench.Tests.Working;

/// <summary>The networks that come with the program on rendered boards whose marks are known.</summary>
public sealed class ReadDeskTests : IDisposable
{
    private readonly FakeBench bench = new();
    private readonly PictureSeats seats = new();
    private readonly JobDesk jobs = new(TimeProvider.System);
    private readonly Acts acts = new();
    private readonly HeadsWatch watch;
    private readonly ReadDesk desk;
    private string models = OnnxNetworks.FolderOf(AppContext.BaseDirectory);
    private int opened;

    public ReadDeskTests()
    {
        watch = new(new BenchOptions { Data = bench, Program = "Lidoff.Bench.Tests", Unguessable = b => b.Fill(1) });
        desk = new(bench, jobs, acts, watch, seats, () =>
        {
            opened++;
            return new OnnxNetworks(models);
        });
    }

    public void Dispose()
    {
        jobs.Dispose();
        desk.Dispose();
        watch.Dispose();
        seats.Dispose();
        bench.Dispose();
    }

    [Fact]
    public async Task A_mark_is_read_stored_and_names_its_spot_at_once()
    {
        await RenderedBoards.Add(bench);
        bench.Set("d", "", RenderedBoards.Spot("U1"));
        Assert.Equal(0, opened);
        Assert.DoesNotContain(bench.View("d", open => open.Model.Identity("U1"))!.Evidence.Told, told => told.Evidence == "mark");
        var tally = (await desk.Start("d", "U1").Result).Value;
        Assert.Equal((1, 0, 0), (tally.Read, tally.Empty, tally.Refused.Count));
        var reading = Assert.Single(Readings());
        Assert.Equal(RenderedBoards.Mark("U1"), reading.Lines.Select(line => line.Readings[0].Text));
        // The mark is that of the nRF52832 (its maker's product specification, marking).
        var answer = bench.View("d", open => open.Model.Identity("U1"))!;
        Assert.Equal(("nRF52832", NameLevel.Part), (answer.Local.Candidates[answer.Best].Part.Name, answer.Level));
        Assert.True(answer.Evidence.Machine is { Counts: true });

        // A person's mark stands beside it and counts; taken back, the machine's counts again.
        bench.Set("d", "", """{"kind":"mark","spot":"U1","lines":["25Q32JVSIQ"]}""");
        answer = bench.View("d", open => open.Model.Identity("U1"))!;
        Assert.Equal(("25Q32JVSIQ", false), (answer.Evidence.Told.Single(told => told.Evidence == "mark").Says, answer.Evidence.Machine!.Counts));
        Assert.Equal(reading, Assert.Single(Readings()));
    }

    [Fact]
    public async Task Read_again_it_is_the_same_reading_and_more_pictures_take_its_place()
    {
        var top = await RenderedBoards.Add(bench);
        bench.Set("d", "", RenderedBoards.Spot("U1"));
        await desk.Start("d", "U1").Result;
        var again = (await desk.Start("d", "U1").Result).Value;
        Assert.Equal((0, 1), (again.Read, again.Same));
        Assert.Single(Readings());
        var close = await RenderedBoards.Add(bench, "brindle-u1.png");
        var part = RenderedBoards.Part("U1", "brindle-u1.png");
        bench.Set("d", "", FormattableString.Invariant($$"""{"kind":"length","spot":"U1","what":"length","picture":"{{close}}","from":[{{part.Left.X}},{{part.Left.Y}}],"to":[{{part.Right.X}},{{part.Right.Y}}]}"""),
            FormattableString.Invariant($$"""{"kind":"length","spot":"U1","what":"width","picture":"{{close}}","from":[{{part.Top.X}},{{part.Top.Y}}],"to":[{{part.Bottom.X}},{{part.Bottom.Y}}]}"""));
        var more = await desk.Start("d", "U1").Result;
        Assert.Equal(1, more.Value.Read);
        Assert.Equal([close, top], Assert.Single(Readings()).Pictures);
        // One act: taken back, the one before stands again.
        bench.Set("d", "", [.. acts.Last("d")!.Entries.Reverse().Select(entry => $$"""{"kind":"undo","target":"{{entry.Hex}}"}""")]);
        Assert.Equal([top], Assert.Single(Readings()).Pictures);
        Assert.Equal("machine reading of U1", acts.Last("d")!.Says);
    }

    [Fact]
    public async Task Specimens_are_read_by_themselves()
    {
        await RenderedBoards.Add(bench);
        await RenderedBoards.Add(bench, "brindle-u1.png");
        bench.Set("d", "",
            RenderedBoards.Spot("U1").Replace("}", ",\"specimen\":\"A\"}", StringComparison.Ordinal),
            """{"kind":"picture","file":"brindle-u1.png","specimen":"B"}""", RenderedBoards.Spot("U1", "brindle-u1.png"));
        Assert.Equal(2, (await desk.Start("d", "U1").Result).Value.Read);
        Assert.All(Readings(), reading => Assert.Single(reading.Pictures));
        Assert.Equal(["A", "B"], bench.View("d", open => open.Session.View.Live<ReadingSighting>().Select(each => each.Specimen).Order(StringComparer.Ordinal).ToList())!);
    }

    [Fact]
    public async Task All_that_is_left_is_read_with_its_progress_and_each_is_stored_as_it_is_made()
    {
        await RenderedBoards.Add(bench);
        bench.Set("d", "", RenderedBoards.Spot("U1"), RenderedBoards.Spot("U2"), RenderedBoards.Spot("U7"), RenderedBoards.Spot("R1", kind: "resistor"), RenderedBoards.Spot("H1", kind: "housing"), """{"kind":"mark","spot":"U2","lines":["25Q32"]}""");
        var said = new List<(long Done, long Total, int Stored)>();
        using var hearing = jobs.Listen(job =>
        {
            lock (said) if (job.Progress.Total > 0) said.Add((job.Progress.Done, job.Progress.Total, Readings().Count));
        });
        var tally = (await desk.StartAll("d", withMarked: false).Result).Value;
        Assert.Equal((2, 0, 0, 1), (tally.Read, tally.Same, tally.Before, tally.ByPeople));
        Assert.Equal(["R1"], tally.Refused.Select(each => each.Spot));
        // R1, U1, U7 in their order; what was read before the next began is stored by then.
        lock (said) Assert.Equal([(0, 3, 0), (1, 3, 0), (2, 3, 1)], said.Distinct().Take(3));
        Assert.Equal("2 machine readings", acts.Last("d")!.Says);
        tally = (await desk.StartAll("d", withMarked: true).Result).Value;
        // R1 is passed over: nothing has changed since it could not be read.
        Assert.Equal((1, 2, 0, 1, 0), (tally.Read, tally.Before, tally.ByPeople, tally.Unread, tally.Refused.Count));
        Assert.Equal(RenderedBoards.Mark("U2"), Readings().Single(each => each.Spot == "U2").Lines.Select(line => line.Readings[0].Text));
        Assert.Equal(1, opened);
    }

    [Fact]
    public async Task What_could_not_be_read_is_tried_again_once_something_changed_or_it_is_asked_for()
    {
        await RenderedBoards.Add(bench);
        bench.Set("d", "", RenderedBoards.Spot("R1", kind: "resistor"));
        Assert.Single((await desk.StartAll("d", withMarked: false).Result).Value.Refused);
        var unread = Assert.Single(Unread());
        Assert.Equal(("R1", 2), (unread.Spot, Assert.Single(unread.Places).At.Count));
        Assert.Equal((0, 1), (await desk.StartAll("d", withMarked: false).Result).Value is var tally ? (tally.Refused.Count, tally.Unread) : default);
        Assert.Single(bench.View("d", open => Telling.Dossiers.StoredUnread.Says(open, "R1"))!);
        // Asked for by itself it is tried; that it still cannot be read is stored once.
        Assert.Single((await desk.Start("d", "R1").Result).Faults);
        Assert.Equal(unread, Assert.Single(Unread()));
        Assert.Null(acts.Last("d"));
        // A box around a mark that is there: it is tried again, and what is read takes the place of what is remembered.
        var (left, right, top, foot) = RenderedBoards.Part("U2") is var part ? (part.Left, part.Right, part.Top, part.Bottom) : default;
        bench.Set("d", "", FormattableString.Invariant($$"""{"kind":"spot","spot":"R1","picture":"brindle-main-top.png","box":[{{left.X}},{{top.Y}},{{right.X - left.X}},{{foot.Y - top.Y}}]}"""));
        Assert.Empty(bench.View("d", open => Telling.Dossiers.StoredUnread.Says(open, "R1"))!);
        Assert.Equal(1, (await desk.StartAll("d", withMarked: false).Result).Value.Read);
        Assert.Empty(Unread());
    }

    [Fact]
    public async Task Stopped_half_way_what_was_read_stays_and_the_rest_is_read_next_time()
    {
        await RenderedBoards.Add(bench);
        bench.Set("d", "", RenderedBoards.Spot("U1"), RenderedBoards.Spot("U2"), RenderedBoards.Spot("U7"));
        Job<ReadTally>? under = null;
        using (var gate = new ManualResetEventSlim())
        {
            bench.BeforeNote = () => { gate.Wait(); under!.Cancel(); };
            under = desk.StartAll("d", withMarked: false);
            gate.Set();
            Assert.Equal("Stopped: reading all marks. What was stored before stays stored.", Assert.Single((await under.Result).Faults).Say);
        }

        bench.BeforeNote = null;
        Assert.Equal("U1", Assert.Single(Readings()).Spot);
        Assert.Equal("1 machine reading", acts.Last("d")!.Says);
        var tally = (await desk.StartAll("d", withMarked: false).Result).Value;
        Assert.Equal((2, 1), (tally.Read, tally.Before));
    }

    [Fact]
    public async Task Networks_that_are_missing_are_told_and_found_once_they_are_put_back()
    {
        using var folder = new TempFolder();
        models = folder["models"];
        Directory.CreateDirectory(models);
        await RenderedBoards.Add(bench);
        bench.Set("d", "", RenderedBoards.Spot("U1"));
        var job = desk.Start("d", "U1");
        Assert.Equal(
            ((string[])["finder", "bodies", "reader"]).Select(file => $"{file}.onnx is missing in {models}: marks cannot be read by the machine until it is put back. Everything else works, and you can type what you read."),
            (await job.Result).Faults.Select(fault => fault.Say));
        Assert.Empty(Readings());
        foreach (var file in Directory.EnumerateFiles(OnnxNetworks.FolderOf(AppContext.BaseDirectory))) File.Copy(file, Path.Combine(models, Path.GetFileName(file)));
        Assert.Equal(1, (await desk.Start("d", "U1").Result).Value.Read);
    }

    [Fact]
    public async Task What_no_picture_shows_and_no_dossier_has_is_a_sentence()
    {
        bench.Set("d", "", """{"kind":"spot","spot":"U5","role":"x"}""");
        Assert.Equal("No picture shows U5 yet: point at it in one (room See, P), or outline its body there (B).", Assert.Single((await desk.Start("d", "U5").Result).Faults).Say);
        Assert.Single((await desk.StartAll("nobody", withMarked: false).Result).Faults);
        Assert.Equal(0, (await desk.StartAll("d", withMarked: false).Result).Value.Read);
    }

    private IReadOnlyList<UnreadSighting> Unread() => bench.View("d", open => open.Session.View.Live<UnreadSighting>().Select(each => each.Value).ToList())!;

    private IReadOnlyList<ReadingSighting> Readings() => bench.View("d", open => open.Session.View.Live<ReadingSighting>().Select(each => each.Value).ToList())!;
}
