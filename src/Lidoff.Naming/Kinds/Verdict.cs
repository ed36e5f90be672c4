namespace Lidoff.Naming.Kinds;

/// <summary>What a person settled about a spot's identity.</summary>
public enum Verdict
{
    /// <summary>It is this part.</summary>
    Accept,

    /// <summary>It is not this part.</summary>
    Reject,

    /// <summary>It is one of this family; which one is not known.</summary>
    Family,

    /// <summary>It is in no list: none of the candidates, whatever the odds say.</summary>
    NotListed,
}
