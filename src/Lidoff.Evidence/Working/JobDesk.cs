using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Working;

/// <summary>
/// All long work of one program: starts jobs, lists them in the order of starting, tells listeners when one moves.
/// The command line prints from it to stderr (<see cref="JobPrinter"/>); pages redraw from it.
/// </summary>
public sealed class JobDesk(TimeProvider time) : IDisposable
{
    private readonly Lock gate = new();
    private readonly List<Job> jobs = [];
    private readonly List<Action<Job>> listeners = [];
    private int started;

    internal DateTimeOffset Now => time.GetUtcNow();

    /// <summary>Every job not yet cleared, in the order of starting.</summary>
    public IReadOnlyList<Job> Jobs
    {
        get { lock (gate) return [.. jobs]; }
    }

    /// <summary>Starts work on another thread and returns at once.</summary>
    public Job<T> Start<T>(string name, Func<IJobReport, Task<Outcome<T>>> work)
    {
        // The job is listed before it can say its first word: its Tell waits for this lock.
        lock (gate)
        {
            var job = new Job<T>(this, ++started, name, Now, work);
            jobs.Add(job);
            return job;
        }
    }

    /// <summary>
    /// Calls <paramref name="listener"/> on each move of any job, from the job's thread, until the returned handle is
    /// disposed. A listener that throws (a page that is gone) is dropped; the job goes on.
    /// </summary>
    public IDisposable Listen(Action<Job> listener)
    {
        lock (gate) listeners.Add(listener);
        return new Listening(() => Drop(listener));
    }

    /// <summary>Takes ended jobs off the list.</summary>
    public void ClearEnded()
    {
        lock (gate)
        {
            foreach (var job in jobs.Where(j => j.State != JobState.Running)) job.Dispose();
            jobs.RemoveAll(j => j.State != JobState.Running);
        }
    }

    /// <summary>Asks every running job to stop.</summary>
    public void StopAll()
    {
        foreach (var job in Jobs) job.Cancel();
    }

    /// <inheritdoc/>
    public void Dispose() => StopAll();

    internal void Tell(Job job)
    {
        Action<Job>[] now;
        lock (gate) now = [.. listeners];
        foreach (var listener in now)
        {
            try
            {
                listener(job);
            }
            catch (Exception)
            {
                Drop(listener);
            }
        }
    }

    private void Drop(Action<Job> listener)
    {
        lock (gate) listeners.Remove(listener);
    }

    private sealed class Listening(Action drop) : IDisposable
    {
        public void Dispose() => drop();
    }
}
