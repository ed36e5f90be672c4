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

    /// <summary>
    /// The line as it is typed, alternatives and all: <c>CIAAE|B0</c>, with <c>8|_</c> for an 8 or nothing and a doubled sign for the
    /// sign itself. <see cref="Text"/> says <c>?</c> where none of several is likely enough.
    /// </summary>
    public string Written => IsLattice ? string.Concat(Places.Select(place => place.Written)) : Text;
}
