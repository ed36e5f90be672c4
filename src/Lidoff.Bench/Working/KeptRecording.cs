using Lidoff.Evidence.Entries;

namespace Lidoff.Bench.Working;

/// <summary>A recording that is stored for good: its name, the hash of its video, and the entries that say so.</summary>
public sealed record KeptRecording(string Recording, string Sha256, ValueList<EntryId> Entries);
