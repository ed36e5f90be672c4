using Lidoff.Evidence.Entries;

namespace Lidoff.Seeing.Kinds;

/// <summary>
/// One line of a mark. As typed: <c>?</c> one character that could not be read, <c>*</c> any number of them, and no places. As a
/// lattice: a place each with its alternatives, and <paramref name="Text"/> is the likeliest reading.
/// </summary>
public sealed record MarkLine(string Text, ValueList<MarkPlace> Places)
{
    /// <summary>True when alternatives were given place by place.</summary>
    public bool IsLattice => Places.Count > 0;
}
