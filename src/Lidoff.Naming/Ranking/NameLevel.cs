namespace Lidoff.Naming.Ranking;

/// <summary>How far the evidence goes.</summary>
public enum NameLevel
{
    /// <summary>Nothing in the catalogue can be named: it is probably not in there, or the evidence does not reach.</summary>
    None,

    /// <summary>The family is clear, the member is not.</summary>
    Family,

    /// <summary>One part.</summary>
    Part,
}
