namespace Lidoff.Evidence.Entries;

/// <summary>An entry as the journal holds it: its stored bytes, which its id is the hash of, and its payload where it was not erased.</summary>
/// <param name="Entry">The entry read from <paramref name="Bytes"/>.</param>
/// <param name="Bytes">The bytes as written, never re-serialised.</param>
/// <param name="Payload">The payload's bytes, a JSON object; null once erased.</param>
public sealed record StoredEntry(Entry Entry, ReadOnlyMemory<byte> Bytes, ReadOnlyMemory<byte>? Payload)
{
    /// <summary>The entry's id.</summary>
    public EntryId Id => Entry.Id;
}
