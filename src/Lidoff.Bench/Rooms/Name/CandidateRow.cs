using Lidoff.Evidence.Entries;

namespace Lidoff.Bench.Rooms.Name;

/// <summary>A part that may sit at a spot.</summary>
/// <param name="Part">Base part.</param>
/// <param name="Maker">Its maker; may be empty.</param>
/// <param name="P">Probability, 0..1.</param>
/// <param name="Because">What speaks for and against it.</param>
public sealed record CandidateRow(string Part, string Maker, double P, ValueList<BecauseRow> Because);
