using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Store;

/// <summary>A journal that lives as long as its process: for tests and for looking into a pack before it is unpacked.</summary>
public sealed class MemoryEntryStore(WriterSeed writer, TimeProvider clock) : IEntryStore
{
    private readonly Lock gate = new();
    private readonly Dictionary<string, (string Key, byte[] Bytes)> cache = new(StringComparer.Ordinal);
    private MemoryTables tables = new();

    /// <inheritdoc/>
    public Outcome<IReadOnlyList<StoredEntry>> Append(IReadOnlyList<EntryDraft> batch, Func<Fault?>? lastCheck = null) =>
        Change(work => lastCheck?.Invoke() is { } fault ? fault : JournalWork.Append(work, writer, clock.GetUtcNow(), batch));

    /// <inheritdoc/>
    public Outcome<MergeSummary> Merge(IReadOnlyList<StoredEntry> incoming, ErasureRule erasures) =>
        Change(work => JournalWork.Merge(work, incoming, erasures));

    /// <inheritdoc/>
    public Outcome<JournalSlice> Read(string? dossier = null, long after = 0)
    {
        lock (gate)
        {
            var entries = tables.Entries.Skip((int)after).Where(e => dossier is null || e.Entry.Dossier == dossier).Select(tables.Current).ToList();
            return new JournalSlice(entries, tables.Entries.Count, []);
        }
    }

    /// <inheritdoc/>
    public Outcome<IReadOnlyList<EntryId>> Heads(string dossier)
    {
        lock (gate) return Outcome(tables.Heads(dossier));
    }

    /// <inheritdoc/>
    public Outcome<IReadOnlyList<string>> Dossiers()
    {
        lock (gate) return Outcome(tables.Entries.Select(e => e.Entry.Dossier).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));
    }

    /// <inheritdoc/>
    public Outcome<IReadOnlyList<EntryId>> Find(string dossier, string prefix)
    {
        lock (gate) return Outcome(tables.Entries.Where(e => e.Entry.Dossier == dossier && e.Id.Hex.StartsWith(prefix, StringComparison.Ordinal)).Select(e => e.Id).Order().Take(2));
    }

    /// <inheritdoc/>
    public Outcome<IReadOnlyList<string>> FilesLeftByErasing()
    {
        lock (gate)
        {
            var held = tables.Entries.Where(e => !tables.IsErased(e.Id)).SelectMany(e => e.Entry.Files).ToHashSet(StringComparer.Ordinal);
            return Outcome(tables.Entries.SelectMany(e => e.Entry.Files).Where(f => !held.Contains(f)).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));
        }
    }

    /// <inheritdoc/>
    public Outcome<T> Alone<T>(Func<Outcome<T>> work)
    {
        lock (gate) return Guard.NotNull(work)();
    }

    /// <inheritdoc/>
    public byte[]? Cached(string dossier, string key)
    {
        lock (gate) return cache.TryGetValue(dossier, out var kept) && kept.Key == key ? kept.Bytes : null;
    }

    /// <inheritdoc/>
    public void Cache(string dossier, string key, ReadOnlySpan<byte> bytes)
    {
        lock (gate) cache[dossier] = (key, bytes.ToArray());
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        // Nothing outlives the object.
    }

    private static Outcome<IReadOnlyList<T>> Outcome<T>(IEnumerable<T> items) => items.ToList();

    private Outcome<T> Change<T>(Func<MemoryTables, Outcome<T>> work)
    {
        lock (gate)
        {
            var changed = tables.Copy();
            var outcome = work(changed);
            if (outcome.Ok) tables = changed;
            return outcome;
        }
    }
}
