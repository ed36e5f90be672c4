using Lidoff.Evidence.Entries;

namespace Lidoff.Bench.Rooms.Name.Spots;

/// <summary>What one sighting says for and against the candidates of a table.</summary>
/// <param name="Evidence">Which evidence: "mark", "body".</param>
/// <param name="Seen">What was seen, in words.</param>
/// <param name="Say">What it says about the first candidate, one sentence.</param>
/// <param name="Decibans">One number a column of the table, against the class's prior; null where it says nothing of that part.</param>
/// <param name="From">Entries it came from.</param>
public sealed record BecauseRow(string Evidence, string Seen, string Say, ValueList<double?> Decibans, ValueList<EntryId> From);
