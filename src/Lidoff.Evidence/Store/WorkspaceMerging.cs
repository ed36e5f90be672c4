using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Store;

/// <summary>Brings over what another workspace, or an unpacked pack, has and this one lacks: files first, then all entries in one step.</summary>
public static class WorkspaceMerging
{
    /// <summary>
    /// Merges <paramref name="from"/> into <paramref name="into"/>, all or nothing: entries show only when every file they name is
    /// stored for good. Files of a merge that failed later may stay behind; no entry names them and they harm nothing.
    /// </summary>
    public static Outcome<MergeSummary> Merge(Workspace into, Workspace from, ErasureRule erasures, CancellationToken stop = default)
    {
        Guard.NotNull(into);
        Guard.NotNull(from);
        return from.Store.Read().Then(slice => slice.Damaged.Count > 0
            ? Outcome<MergeSummary>.Failed(slice.Damaged)
            : Merge(into, slice.Entries, hash => from.Files.Open(hash, hash), erasures, stop));
    }

    /// <summary>Merges entries whose files <paramref name="open"/> hands out by their hash.</summary>
    public static Outcome<MergeSummary> Merge(
        Workspace into, IReadOnlyList<StoredEntry> incoming, Func<string, Outcome<Stream>> open, ErasureRule erasures, CancellationToken stop = default)
    {
        var rehearsed = Rehearse(into, incoming, erasures);
        if (!rehearsed.Ok) return rehearsed;

        var brought = incoming.Where(e => e.Payload is not null).SelectMany(e => e.Entry.Files).ToHashSet(StringComparer.Ordinal);
        var faults = new List<Fault>();
        foreach (var hash in brought.Order(StringComparer.Ordinal))
        {
            if (!into.Files.Has(hash)) faults.AddRange(Bring(into.Files, hash, open, stop));
            else if (into.Files.Settle(hash) is { } unsettled) faults.Add(unsettled);
            if (faults.Count > 0) break;
        }

        if (faults.Count > 0) return Outcome<MergeSummary>.Failed(faults);
        var merged = into.Store.Merge(incoming, erasures);
        if (merged.Ok && merged.Value.Erased > 0) into.RemoveErasedFiles();
        return merged;
    }

    /// <summary>Tries the entries on a copy in memory, so that a merge that will be refused copies no files.</summary>
    private static Outcome<MergeSummary> Rehearse(Workspace into, IReadOnlyList<StoredEntry> incoming, ErasureRule erasures) => into.Store.Read().Then(here =>
    {
        using var copy = new MemoryEntryStore(new WriterSeed(new byte[WriterSeed.LeastBytes]), TimeProvider.System);
        return copy.Merge(here.Entries, ErasureRule.Follow).Then(_ => copy.Merge(incoming, erasures));
    });

    private static IReadOnlyList<Fault> Bring(FileVault vault, string hash, Func<string, Outcome<Stream>> open, CancellationToken stop)
    {
        if (!open(hash).TryValue(out var stream)) return [StoreSentences.FileNotBrought(hash)];
        using (stream)
        {
            var taken = vault.Take(stream, hash, stop: stop);
            if (!taken.Ok) return taken.Faults;
            return taken.Value.Sha256 == hash ? [] : [StoreSentences.FileNotBrought(hash)];
        }
    }
}
