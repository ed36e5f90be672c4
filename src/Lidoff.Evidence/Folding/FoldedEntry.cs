using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Folding;

/// <summary>An entry and what became of it. <paramref name="By"/> are the control entries that made it so, in fold order.</summary>
public sealed record FoldedEntry(Entry Entry, EntryFate Fate, IReadOnlyList<EntryId> By)
{
    /// <summary>Why its payload could not be read; empty otherwise.</summary>
    public IReadOnlyList<Fault> Faults { get; init; } = [];

    /// <summary>The payload's bytes as stored, so that unknown and refused entries can be shown; null once erased.</summary>
    public ReadOnlyMemory<byte>? Payload { get; init; }
}
