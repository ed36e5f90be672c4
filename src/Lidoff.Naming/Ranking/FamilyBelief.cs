namespace Lidoff.Naming.Ranking;

/// <summary>The likeliest family: its stem, the probability that the part is one of its listed members, and how many are listed.</summary>
public sealed record FamilyBelief(string Name, double P, int Members);
