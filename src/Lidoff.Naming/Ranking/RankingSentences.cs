namespace Lidoff.Naming.Ranking;

/// <summary>Every sentence about a ranking that a person may see.</summary>
public static class RankingSentences
{
    /// <summary>Nothing to go by.</summary>
    public const string EmptyEvidence = "There is no evidence; what stands here is what is met in wearables at large.";

    /// <summary>A thing of a kind that no list holds.</summary>
    public const string Unlisted = "A cell is in no list of parts: what is printed on it is kept as it is, and not compared with chips.";

    /// <summary>The evidence contradicts itself for every listed part.</summary>
    public const string Contradiction = "No listed part fits all of the evidence; look at the readings again before believing 'none of these'.";
}
