using System.Globalization;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Working;

/// <summary>The sentences users see of jobs.</summary>
internal static class WorkingSentences
{
    public static Fault Stopped(string job) => new(job, "the work to run to its end", "Stopped: " + job + ". What was stored before stays stored.");

    public static Fault Broke(string job, string what) =>
        new(job, "the work to run to its end", "This went wrong in Lidoff itself: " + job + ". " + what + " Nothing that was stored is lost.");

    public static string Line(Job job)
    {
        var p = job.Progress;
        var far = p.Share is { } share ? string.Create(CultureInfo.InvariantCulture, $" {Math.Floor(share * 100):0} % ({p.Done} of {p.Total})") : "";
        return job.State switch
        {
            JobState.Done => job.Name + ": done",
            JobState.Failed or JobState.Stopped => string.Join('\n', job.Faults.Select(f => f.Say)),
            _ => job.Name + ":" + far + (p.Words.Length > 0 ? " " + p.Words : far.Length > 0 ? "" : " started"),
        };
    }
}
