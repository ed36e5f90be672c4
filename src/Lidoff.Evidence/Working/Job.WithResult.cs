using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Working;

/// <summary>A job with its result.</summary>
/// <typeparam name="T">What the work gives.</typeparam>
public sealed class Job<T> : Job
{
    internal Job(JobDesk desk, int number, string name, DateTimeOffset started, Func<IJobReport, Task<Outcome<T>>> work)
        : base(desk, number, name, started) => Result = Task.Run(() => Work(work));

    /// <summary>The result or why there is none. Never throws: a stopped job and one that broke give faults too.</summary>
    public Task<Outcome<T>> Result { get; }

    private async Task<Outcome<T>> Work(Func<IJobReport, Task<Outcome<T>>> work)
    {
        try
        {
            var outcome = await work(this).ConfigureAwait(false);
            End(outcome.Ok ? JobState.Done : JobState.Failed, outcome.Faults, null);
            return outcome;
        }
        catch (OperationCanceledException) when (Stop.IsCancellationRequested)
        {
            var fault = WorkingSentences.Stopped(Name);
            End(JobState.Stopped, [fault], null);
            return fault;
        }
        catch (Exception e)
        {
            // The desk must outlive any job: what nobody foresaw becomes a sentence, and the exception is kept for the report.
            var fault = WorkingSentences.Broke(Name, e.Message);
            End(JobState.Failed, [fault], e);
            return fault;
        }
    }
}
