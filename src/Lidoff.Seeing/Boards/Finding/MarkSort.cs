namespace Lidoff.Seeing.Boards.Finding;

/// <summary>What a found mark looks like. None of these says what it is: a dark disc may be a hole, a via under mask or the dot on a chip.</summary>
public enum MarkSort
{
    /// <summary>A dark disc: a drilled hole over a dark table, a via under mask.</summary>
    Dark,

    /// <summary>A bright disc: a test point, a hole over a light table, solder.</summary>
    Bright,

    /// <summary>A dark disc in the middle of a bright one: a plated hole.</summary>
    Ring,
}
