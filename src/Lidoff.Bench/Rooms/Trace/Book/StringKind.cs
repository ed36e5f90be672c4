namespace Lidoff.Bench.Rooms.Trace.Book;

/// <summary>What a string between two points stands for; each has a stroke of its own, not only a colour.</summary>
public enum StringKind
{
    /// <summary>A beep: solid.</summary>
    Beep,

    /// <summary>Ohms: solid and thin.</summary>
    Ohms,

    /// <summary>Volts: dotted.</summary>
    Volts,

    /// <summary>Open, or no beep: dashed.</summary>
    Open,
}
