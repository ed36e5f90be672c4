namespace Lidoff.Bench.Rooms.Trace.Typed;

/// <summary>What a number without a unit means; a meter that acts as a keyboard sends no unit.</summary>
public enum MeterMode
{
    /// <summary>Ohms.</summary>
    Ohms,

    /// <summary>Volts, of the first point against the second.</summary>
    Volts,

    /// <summary>Nothing; it is asked about.</summary>
    Ask,
}
