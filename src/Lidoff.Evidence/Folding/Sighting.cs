using Lidoff.Evidence.Entries;

namespace Lidoff.Evidence.Folding;

/// <summary>A live entry with its payload read: what a room's engine works on. <paramref name="Specimen"/> is empty where none was named.</summary>
public sealed record Sighting<T>(Entry Entry, string Specimen, T Value)
    where T : class
{
    /// <summary>The entry's id.</summary>
    public EntryId Id => Entry.Id;
}
