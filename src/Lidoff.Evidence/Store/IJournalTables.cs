using Lidoff.Evidence.Entries;

namespace Lidoff.Evidence.Store;

/// <summary>What <see cref="JournalWork"/> asks of a storage inside one transaction. A store has to bring only this and the transaction.</summary>
internal interface IJournalTables
{
    /// <summary>The entry, or null.</summary>
    Entry? Find(EntryId id);

    /// <summary>The entry at a place of a chain, or null.</summary>
    EntryId? At(string chain, long seq);

    /// <summary>The newest entry of a chain, or null.</summary>
    (long Seq, EntryId Id)? Last(string chain);

    /// <summary>Entries of the dossier that no other entry links to.</summary>
    IReadOnlyList<EntryId> Heads(string dossier);

    /// <summary>Adds an entry, with its payload where it has one, and the files it names.</summary>
    void Insert(StoredEntry entry);

    /// <summary>Adds a head.</summary>
    void AddHead(string dossier, EntryId id);

    /// <summary>Takes heads away; those that are none are passed over.</summary>
    void RemoveHead(string dossier, EntryId id);

    /// <summary>True when an erasure names this entry.</summary>
    bool IsErased(EntryId id);

    /// <summary>Notes that an entry is erased, whether or not it is here yet, and removes its payload. True when there was one to remove.</summary>
    bool Erase(EntryId id);
}
