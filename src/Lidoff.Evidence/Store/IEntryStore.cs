using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Store;

/// <summary>
/// The journal's keeper. What it returns as stored is stored for good; what it refuses has left no trace. Several
/// processes may write at once, each to its own chains. Safe to call from several threads.
/// </summary>
public interface IEntryStore : IDisposable
{
    /// <summary>
    /// Stores a batch, all or nothing, and hands it back in the order given. An <c>erase</c> among it removes its targets'
    /// payloads in the same step. <paramref name="lastCheck"/> runs when nobody else can write any more; a fault from it stops
    /// the batch.
    /// </summary>
    Outcome<IReadOnlyList<StoredEntry>> Append(IReadOnlyList<EntryDraft> batch, Func<Fault?>? lastCheck = null);

    /// <summary>Adds the entries that are missing here, all or nothing. Refuses forks, gaps, lies about hashes, and payloads missing without an erasure.</summary>
    Outcome<MergeSummary> Merge(IReadOnlyList<StoredEntry> incoming, ErasureRule erasures);

    /// <summary>Entries of one dossier, or of all where it is null, that came after arrival number <paramref name="after"/>.</summary>
    Outcome<JournalSlice> Read(string? dossier = null, long after = 0);

    /// <summary>Newest entries of a dossier, those that no other one has seen, in id order.</summary>
    Outcome<IReadOnlyList<EntryId>> Heads(string dossier);

    /// <summary>Short names of the dossiers that have entries, in ordinal order.</summary>
    Outcome<IReadOnlyList<string>> Dossiers();

    /// <summary>Ids of a dossier's entries that begin with <paramref name="prefix"/>, at most two: enough to tell none, one and several apart.</summary>
    Outcome<IReadOnlyList<EntryId>> Find(string dossier, string prefix);

    /// <summary>Files that only erased entries name, in ordinal order.</summary>
    Outcome<IReadOnlyList<string>> FilesLeftByErasing();

    /// <summary>Runs <paramref name="work"/> while nobody else can write.</summary>
    Outcome<T> Alone<T>(Func<Outcome<T>> work);

    /// <summary>The cached bytes kept under exactly this key, or null. A cache may vanish at any time.</summary>
    byte[]? Cached(string dossier, string key);

    /// <summary>Keeps bytes for a dossier in place of what was kept before. Does nothing when they cannot be kept.</summary>
    void Cache(string dossier, string key, ReadOnlySpan<byte> bytes);
}
