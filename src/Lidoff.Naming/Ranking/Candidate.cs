using Lidoff.Catalogue.Parts;

namespace Lidoff.Naming.Ranking;

/// <summary>A part that may sit at a spot: its order codes narrowed to what the evidence allows, its probability, and why.</summary>
public sealed record Candidate(Part Part, IReadOnlyList<string> OrderCodes, double P, IReadOnlyList<Because> Because);
