using Lidoff.Evidence.Entries;

namespace Lidoff.Evidence.Store;

/// <summary>The journal's tables as plain collections; a transaction is a copy that takes the original's place or is dropped.</summary>
internal sealed class MemoryTables : IJournalTables
{
    private readonly Dictionary<EntryId, StoredEntry> byId = [];
    private readonly Dictionary<(string Chain, long Seq), EntryId> places = [];
    private readonly Dictionary<string, long> ends = new(StringComparer.Ordinal);
    private readonly HashSet<(string Dossier, EntryId Id)> heads = [];
    private readonly HashSet<EntryId> erased = [];

    public MemoryTables()
    {
    }

    private MemoryTables(MemoryTables from)
    {
        Entries.AddRange(from.Entries);
        byId = new(from.byId);
        places = new(from.places);
        ends = new(from.ends, StringComparer.Ordinal);
        heads = [.. from.heads];
        erased = [.. from.erased];
    }

    /// <summary>Entries in order of arrival, as they came; <see cref="Current"/> knows whether the payload is still here.</summary>
    public List<StoredEntry> Entries { get; } = [];

    public MemoryTables Copy() => new(this);

    public StoredEntry Current(StoredEntry entry) => byId[entry.Id];

    public Entry? Find(EntryId id) => byId.GetValueOrDefault(id)?.Entry;

    public EntryId? At(string chain, long seq) => places.TryGetValue((chain, seq), out var id) ? id : null;

    public (long Seq, EntryId Id)? Last(string chain) => ends.TryGetValue(chain, out var seq) ? (seq, places[(chain, seq)]) : null;

    public IReadOnlyList<EntryId> Heads(string dossier) => heads.Where(h => h.Dossier == dossier).Select(h => h.Id).Order().ToList();

    public void Insert(StoredEntry entry)
    {
        Entries.Add(entry);
        byId.Add(entry.Id, entry);
        places.Add((entry.Entry.Chain, entry.Entry.Seq), entry.Id);
        ends[entry.Entry.Chain] = Math.Max(entry.Entry.Seq, ends.GetValueOrDefault(entry.Entry.Chain));
    }

    public void AddHead(string dossier, EntryId id) => heads.Add((dossier, id));

    public void RemoveHead(string dossier, EntryId id) => heads.Remove((dossier, id));

    public bool IsErased(EntryId id) => erased.Contains(id);

    public bool Erase(EntryId id)
    {
        erased.Add(id);
        if (byId.GetValueOrDefault(id) is not { Payload: not null } stored) return false;
        byId[id] = stored with { Payload = null };
        return true;
    }
}
