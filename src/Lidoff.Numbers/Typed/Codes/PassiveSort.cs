namespace Lidoff.Numbers.Typed.Codes;

/// <summary>What sort of part a code or colour bands stand on.</summary>
public enum PassiveSort
{
    /// <summary>A resistor, or a zero-ohm link.</summary>
    Resistor,

    /// <summary>A capacitor.</summary>
    Capacitor,

    /// <summary>An inductor or a bead.</summary>
    Inductor,

    /// <summary>A fuse.</summary>
    Fuse,
}
