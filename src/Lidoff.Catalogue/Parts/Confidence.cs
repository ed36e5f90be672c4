namespace Lidoff.Catalogue.Parts;

/// <summary>How a catalogue row is known.</summary>
public enum Confidence
{
    /// <summary>Recalled without looking up: grade E1 at most.</summary>
    Memory,

    /// <summary>Worked out from another published fact.</summary>
    Derived,

    /// <summary>Stands in a named public source.</summary>
    Published,
}
