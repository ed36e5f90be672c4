namespace Lidoff.Evidence.Grading;

/// <summary>How well something is known; printed as its name (<c>E3</c>) with every number and name.</summary>
public enum Grade
{
    /// <summary>A guess.</summary>
    E0,

    /// <summary>Looks like; also a fact recalled from memory.</summary>
    E1,

    /// <summary>One line of evidence. A "why" goes no higher without its maker's word.</summary>
    E2,

    /// <summary>Two independent lines of evidence.</summary>
    E3,

    /// <summary>Measured in circuit.</summary>
    E4,

    /// <summary>Read back, or confirmed by its maker.</summary>
    E5,
}
