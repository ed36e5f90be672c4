using Lidoff.Evidence.Grading;

namespace Lidoff.Bench.Rooms.Tell;

/// <summary>A sentence with its support.</summary>
/// <param name="Id">"C7".</param>
/// <param name="Text">The sentence with its values filled in.</param>
/// <param name="Grade">How well it is known.</param>
/// <param name="State">"same", "moved", "outside", "flipped", "lost" or "program changed"; "new" before it was published.</param>
/// <param name="RestsOn">How many entries it rests on.</param>
public sealed record ClaimRow(string Id, string Text, Grade Grade, string State, int RestsOn);
