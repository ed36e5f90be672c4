using Lidoff.Evidence.Entries;

namespace Lidoff.Evidence.Folding;

/// <summary>An entry and what became of it. <paramref name="By"/> are the control entries that made it so, in fold order.</summary>
public sealed record FoldedEntry(Entry Entry, EntryFate Fate, IReadOnlyList<EntryId> By);
