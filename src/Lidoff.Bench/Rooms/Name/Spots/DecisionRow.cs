using Lidoff.Evidence.Entries;

namespace Lidoff.Bench.Rooms.Name.Spots;

/// <summary>What a person settled about a spot.</summary>
/// <param name="Entry">Its entry.</param>
/// <param name="Says">"U3 is RV-3032".</param>
/// <param name="Why">The reason given.</param>
public sealed record DecisionRow(EntryId Entry, string Says, string Why);
