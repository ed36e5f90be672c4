using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Working;

/// <summary>Long work that runs beside: how far it is, how it ended, and a way to stop it. Safe to look at from any thread.</summary>
public abstract class Job : IJobReport, IDisposable
{
    private readonly CancellationTokenSource stop = new();
    private readonly JobDesk desk;
    private volatile JobProgress progress = JobProgress.None;
    private volatile JobEnd? end;

    private protected Job(JobDesk desk, int number, string name, DateTimeOffset started)
    {
        this.desk = desk;
        Number = number;
        Name = name;
        Started = started;
        Stop = stop.Token;
    }

    /// <summary>From 1 in the order of starting; names it on its desk.</summary>
    public int Number { get; }

    /// <summary>What is being done, in words.</summary>
    public string Name { get; }

    /// <summary>When it started.</summary>
    public DateTimeOffset Started { get; }

    /// <summary>When it ended; null while it runs.</summary>
    public DateTimeOffset? Ended => end?.At;

    /// <summary>Where it stands.</summary>
    public JobState State => end?.State ?? JobState.Running;

    /// <summary>The newest word on how far it is.</summary>
    public JobProgress Progress => progress;

    /// <summary>Why it failed or that it was stopped; empty while it runs and when it is done.</summary>
    public IReadOnlyList<Fault> Faults => end?.Faults ?? [];

    /// <summary>The exception behind a failure that the work did not foresee, for the report file; null otherwise.</summary>
    public Exception? Unforeseen => end?.Unforeseen;

    /// <inheritdoc/>
    public CancellationToken Stop { get; }

    /// <inheritdoc/>
    public void Say(long done, long total, string words)
    {
        progress = new(done, total, words);
        desk.Tell(this);
    }

    /// <summary>Asks it to stop. It ends as <see cref="JobState.Stopped"/> once its work has looked up; ended jobs stay as they are.</summary>
    public void Cancel()
    {
        try
        {
            if (end is null) stop.Cancel();
        }
        catch (ObjectDisposedException)
        {
            // It ended and was cleared between the two looks: nothing is left to stop.
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        stop.Dispose();
        GC.SuppressFinalize(this);
    }

    private protected void End(JobState state, IReadOnlyList<Fault> faults, Exception? unforeseen)
    {
        end = new(state, desk.Now, faults, unforeseen);
        desk.Tell(this);
    }
}
