namespace Lidoff.Naming.Ranking;

/// <summary>One reason: which evidence, what it says in decibans against the class's prior for that candidate, and the sentence.</summary>
public sealed record Because(string Evidence, double Db, string Say);
