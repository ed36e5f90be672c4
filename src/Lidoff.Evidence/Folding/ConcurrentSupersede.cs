using Lidoff.Evidence.Entries;

namespace Lidoff.Evidence.Folding;

/// <summary>
/// People who had not seen each other's work put different entries in the place of one. All of them stay live; which one
/// is right is a quarrel for a person.
/// </summary>
/// <param name="Old">The entry whose place was taken.</param>
/// <param name="By">The supersede entries that did not know of each other, in fold order.</param>
/// <param name="Replacements">What each put in its place, in the same order.</param>
public sealed record ConcurrentSupersede(EntryId Old, ValueList<EntryId> By, ValueList<EntryId> Replacements);
