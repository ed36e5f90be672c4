namespace Lidoff.Bench.Rooms.Name.Spots;

/// <summary>A part that the evidence removed, and the sighting that spoke against it most.</summary>
/// <param name="Part">The part.</param>
/// <param name="P">What is left of it, 0..1.</param>
/// <param name="Evidence">Which evidence removed it.</param>
/// <param name="Decibans">How much it said, below zero.</param>
/// <param name="Say">The sentence.</param>
public sealed record RivalRow(string Part, double P, string Evidence, double Decibans, string Say);
