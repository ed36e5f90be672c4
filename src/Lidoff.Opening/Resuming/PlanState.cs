namespace Lidoff.Opening.Resuming;

/// <summary>How a planned step stands.</summary>
public enum PlanState
{
    /// <summary>It can be done: everything before it is done.</summary>
    Open,

    /// <summary>Another plan comes first.</summary>
    Waiting,

    /// <summary>A step carried it out.</summary>
    Done,
}
