namespace Lidoff.Bench.Rooms.Name.Spots;

/// <summary>A part that may sit at a spot.</summary>
/// <param name="Part">Base part.</param>
/// <param name="Maker">Its maker; may be empty.</param>
/// <param name="Class">What sort of part it is; may be empty.</param>
/// <param name="P">Probability, 0..1, decisions included.</param>
public sealed record CandidateRow(string Part, string Maker, string Class, double P);
