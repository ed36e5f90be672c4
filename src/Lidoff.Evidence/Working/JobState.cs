namespace Lidoff.Evidence.Working;

/// <summary>Where a job stands.</summary>
public enum JobState
{
    /// <summary>At work.</summary>
    Running,

    /// <summary>Came to its result.</summary>
    Done,

    /// <summary>Came to faults instead; they say why.</summary>
    Failed,

    /// <summary>Stopped by the user.</summary>
    Stopped,
}
