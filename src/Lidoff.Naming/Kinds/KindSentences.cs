using Lidoff.Numbers.Failing;

namespace Lidoff.Naming.Kinds;

/// <summary>Every sentence about an entry of Name that a person may see.</summary>
public static class KindSentences
{
    /// <summary>None or more than one of the four ways to settle a spot.</summary>
    public static Fault OneVerdict { get; } = new("accept", "exactly one of \"accept\", \"accept_family\", \"reject\" and \"not_listed\"",
        "A decision accepts one part, accepts one family, rejects one part, or says that the part is in no list: give exactly one of 'accept', 'accept_family', 'reject' and 'not_listed'.");

    /// <summary>A family of which nothing is said.</summary>
    public static Fault FamilyTooShort { get; } = new("accept_family", "at least two letters or digits that all members begin with",
        "Say which family: the letters and digits that all its members begin with, as in STM32L4 or TPS6274x.");
}
