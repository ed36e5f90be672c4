using Lidoff.Evidence.Working;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Tests.Working;

public sealed class JobDeskTests
{
    private readonly ManualTime time = new();

    [Fact]
    public async Task Work_that_is_done_hands_out_its_result()
    {
        using var desk = new JobDesk(time);
        var gate = new TaskCompletionSource();
        var job = desk.Start<int>("stitching", async report =>
        {
            report.Say(3, 12, "slices");
            await gate.Task;
            return 7;
        });
        while (job.Progress.Total == 0) await Task.Yield();
        Assert.Equal((JobState.Running, 0.25), (job.State, job.Progress.Share));
        time.Move(TimeSpan.FromSeconds(5));
        gate.SetResult();
        Assert.Equal(7, (await job.Result).Value);
        Assert.Equal(JobState.Done, job.State);
        Assert.Equal(TimeSpan.FromSeconds(5), job.Ended - job.Started);
        Assert.Empty(job.Faults);
    }

    [Fact]
    public async Task A_stopped_job_says_so()
    {
        using var desk = new JobDesk(time);
        var job = desk.Start<int>("stitching", async report =>
        {
            await Task.Delay(Timeout.Infinite, report.Stop);
            return 7;
        });
        job.Cancel();
        var outcome = await job.Result;
        Assert.Equal(JobState.Stopped, job.State);
        Assert.Equal("Stopped: stitching. What was stored before stays stored.", Assert.Single(outcome.Faults).Say);
    }

    [Fact]
    public async Task A_job_that_breaks_says_its_sentence_and_the_desk_goes_on()
    {
        using var desk = new JobDesk(time);
        var broken = desk.Start<int>("aligning", _ => throw new InvalidDataException("The slice is empty."));
        var whole = desk.Start<int>("counting", _ => Task.FromResult<Outcome<int>>(1));
        var refused = desk.Start<int>("reading", _ => Task.FromResult<Outcome<int>>(new Fault("file", "a picture", "This is no picture.")));
        var say = Assert.Single((await broken.Result).Faults).Say;
        Assert.Equal("This went wrong in Lidoff itself: aligning. The slice is empty. Nothing that was stored is lost.", say);
        Assert.IsType<InvalidDataException>(broken.Unforeseen);
        Assert.True((await whole.Result).Ok);
        Assert.Equal("This is no picture.", Assert.Single((await refused.Result).Faults).Say);
        Assert.Null(refused.Unforeseen);
        Assert.Equal([(1, JobState.Failed), (2, JobState.Done), (3, JobState.Failed)], desk.Jobs.Select(j => (j.Number, j.State)));
        desk.ClearEnded();
        Assert.Empty(desk.Jobs);
        broken.Cancel();
        Assert.Equal(JobState.Failed, broken.State);
    }

    [Fact]
    public async Task Listeners_hear_every_move_until_they_let_go_and_one_that_throws_harms_nobody()
    {
        using var desk = new JobDesk(time);
        var heard = new List<(string, long, JobState)>();
        var thrown = 0;
        using var bad = desk.Listen(_ =>
        {
            thrown++;
            throw new ObjectDisposedException("page");
        });
        var good = desk.Listen(j => heard.Add((j.Name, j.Progress.Done, j.State)));
        await desk.Start<int>("a", report =>
        {
            report.Say(1, 2, "");
            report.Say(2, 2, "");
            return Task.FromResult<Outcome<int>>(0);
        }).Result;
        good.Dispose();
        await desk.Start<int>("b", _ => Task.FromResult<Outcome<int>>(0)).Result;
        Assert.Equal([("a", 1, JobState.Running), ("a", 2, JobState.Running), ("a", 2, JobState.Done)], heard);
        Assert.Equal(1, thrown);
    }

    [Fact]
    public async Task The_printer_keeps_quiet_between_lines_but_prints_the_last()
    {
        using var desk = new JobDesk(time);
        using var text = new StringWriter();
        using var printing = new JobPrinter(text, time, TimeSpan.FromSeconds(1)).Attach(desk);
        await desk.Start<int>("adding", report =>
        {
            report.Say(1, 4, "files");
            report.Say(2, 4, "files");
            time.Move(TimeSpan.FromSeconds(2));
            report.Say(3, 4, "files");
            report.Say(0, 0, "the last one");
            return Task.FromResult<Outcome<int>>(0);
        }).Result;
        Assert.Equal("adding: 25 % (1 of 4) files\nadding: 75 % (3 of 4) files\nadding: done\n", text.ToString());
    }
}
