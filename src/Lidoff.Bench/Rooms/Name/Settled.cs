namespace Lidoff.Bench.Rooms.Name;

/// <summary>How far a spot is settled.</summary>
public enum Settled
{
    /// <summary>Nothing was seen that could name it, or nothing is likely enough.</summary>
    Open,

    /// <summary>The family is clear, the member is not.</summary>
    Family,

    /// <summary>One part.</summary>
    Part,

    /// <summary>Most likely in no list.</summary>
    None,
}
