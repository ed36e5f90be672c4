namespace Lidoff.Bench.Rooms.Reckon;

/// <summary>What one input contributes to a number's doubt.</summary>
/// <param name="Input">The input.</param>
/// <param name="Share">Part of the variance, 0..1; below zero only where inputs are correlated.</param>
public sealed record ShareRow(string Input, double Share);
