namespace Lidoff.Evidence.Working;

/// <summary>
/// Prints jobs as lines for people (stderr): at most one line a job in <paramref name="quiet"/>, and always the last.
/// </summary>
public sealed class JobPrinter(TextWriter to, TimeProvider time, TimeSpan quiet)
{
    private readonly Lock gate = new();
    private readonly Dictionary<int, long> printed = [];

    /// <summary>Prints from <paramref name="desk"/> until the returned handle is disposed.</summary>
    public IDisposable Attach(JobDesk desk) => desk.Listen(Print);

    private void Print(Job job)
    {
        lock (gate)
        {
            var now = time.GetTimestamp();
            if (job.State == JobState.Running && printed.TryGetValue(job.Number, out var before)
                && time.GetElapsedTime(before, now) < quiet) return;
            printed[job.Number] = now;
            to.Write(WorkingSentences.Line(job) + "\n");
        }
    }
}
