namespace Lidoff.Evidence.Working;

/// <summary>What long work is given: a way to say how far it is, and whether it should stop.</summary>
public interface IJobReport
{
    /// <summary>Set when the user stops the job. Work that honours it throws <see cref="OperationCanceledException"/> by it.</summary>
    CancellationToken Stop { get; }

    /// <summary>Says how far the work is; cheap, may be called from any thread. Total 0: unknown.</summary>
    void Say(long done, long total, string words);
}
