using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Working;

/// <summary>How a job ended, written in one piece so that no reader sees half of it.</summary>
internal sealed record JobEnd(JobState State, DateTimeOffset At, IReadOnlyList<Fault> Faults, Exception? Unforeseen);
