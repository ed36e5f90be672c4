using Lidoff.Numbers.Failing;

namespace Lidoff.Naming.Kinds;

/// <summary>Every sentence about an entry of Name that a person may see.</summary>
public static class KindSentences
{
    /// <summary>None or more than one of the three ways to settle a spot.</summary>
    public static Fault OneVerdict { get; } = new("accept", "exactly one of \"accept\", \"reject\" and \"not_listed\"",
        "A decision accepts one part, rejects one part, or says that the part is in no list: give exactly one of 'accept', 'reject' and 'not_listed'.");
}
