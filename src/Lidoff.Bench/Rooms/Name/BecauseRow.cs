namespace Lidoff.Bench.Rooms.Name;

/// <summary>One line of evidence for a candidate: kind, decibans against the class's prior, and the sentence.</summary>
public sealed record BecauseRow(string Evidence, double Decibans, string Say);
