using Lidoff.Evidence.Entries;

namespace Lidoff.Evidence.Folding;

/// <summary>A live entry with its payload read, for code that does not know the payload's type.</summary>
/// <param name="Entry">The entry.</param>
/// <param name="Specimen">The specimen it names; empty where it names none.</param>
/// <param name="Type">The type its kind's payload becomes.</param>
/// <param name="Value">The payload, of that type.</param>
public sealed record LiveEntry(Entry Entry, string Specimen, Type Type, object Value)
{
    /// <summary>The entry's id.</summary>
    public EntryId Id => Entry.Id;
}
