using Lidoff.Evidence.Entries;

namespace Lidoff.Weighing.Quarrels;

/// <summary>Sightings that cannot all be true, none of which can be left out. <paramref name="Settle"/> is what would settle it.</summary>
public sealed record Quarrel(string Rule, ValueList<EntryId> Members, string Say, string Settle);
