using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Store;

/// <summary>
/// Proves that nothing changed: every entry against its name, every chain without a gap, every payload and every file against its
/// hash, every missing payload against the erasure that names it. Changes nothing.
/// </summary>
public static class Verifier
{
    /// <summary>Verifies a workspace; each file is read whole. <paramref name="progress"/> hears how many files are done.</summary>
    public static Outcome<Verification> Run(Workspace workspace, Action<int, int>? progress = null, CancellationToken stop = default)
    {
        Guard.NotNull(workspace);
        return workspace.Store.Read().Then(slice =>
        {
            var faults = new List<Fault>(slice.Damaged);
            var byRight = slice.Entries.Where(stored => IsErasure(stored.Entry)).SelectMany(stored => stored.Entry.Targets).ToHashSet();
            var erased = Entries(slice.Entries, byRight, faults);
            Heads(workspace.Store, slice, faults);
            var files = Files(workspace.Files, slice.Entries, byRight, faults, progress, stop);
            return new Verification(slice.Entries.Count, files, erased, [.. faults.OrderBy(fault => fault.Where, StringComparer.Ordinal)]);
        });
    }

    /// <summary>Only what the store itself carries out as an erasure excuses a missing content.</summary>
    private static bool IsErasure(Entry entry) =>
        entry.Kind == ControlKinds.Erase && entry.KindVersion <= ControlKinds.Version && entry.Format <= EntryCodec.Format;

    /// <summary>A chain that lost its last entry has no gap; the heads still name it.</summary>
    private static void Heads(IEntryStore store, JournalSlice slice, List<Fault> faults)
    {
        var known = slice.Entries.Select(stored => stored.Id.Hex).Concat(slice.Damaged.Select(fault => fault.Where)).ToHashSet(StringComparer.Ordinal);
        foreach (var dossier in slice.Entries.Select(stored => stored.Entry.Dossier).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal))
        {
            var heads = store.Heads(dossier);
            if (!heads.TryValue(out var found))
            {
                faults.AddRange(heads.Faults);
                continue;
            }

            faults.AddRange(found.Where(head => !known.Contains(head.Hex)).Select(StoreSentences.HeadGone));
        }
    }

    private static int Entries(IReadOnlyList<StoredEntry> entries, HashSet<EntryId> erasedByRight, List<Fault> faults)
    {
        var byId = entries.ToDictionary(stored => stored.Id, stored => stored.Entry);
        var damaged = faults.Select(fault => fault.Where).ToHashSet(StringComparer.Ordinal);
        var places = new Dictionary<(string Chain, long Seq), EntryId>();
        var erased = 0;
        foreach (var stored in entries)
        {
            var entry = stored.Entry;
            foreach (var link in CausalOrder.Links(entry).Where(link => !byId.ContainsKey(link))) faults.Add(StoreSentences.LinkGone(entry.Id, link));
            if (!places.TryAdd((entry.Chain, entry.Seq), entry.Id)) faults.Add(StoreSentences.ForkHere(entry, places[(entry.Chain, entry.Seq)]));
            var before = entry.Previous is { } previous ? byId.GetValueOrDefault(previous) : null;
            var first = entry.Previous is null;
            if ((first && entry.Seq != 1) || (before is not null && (before.Chain != entry.Chain || before.Seq != entry.Seq - 1))) faults.Add(StoreSentences.OutOfPlace(entry));
            if (stored.Payload is { } payload)
            {
                if (!EntryCodec.Belongs(entry, payload.Span)) faults.Add(StoreSentences.PayloadDamaged(entry.Id.Hex));
            }
            else if (erasedByRight.Contains(entry.Id)) erased++;
            else if (!damaged.Contains(entry.Id.Hex)) faults.Add(StoreSentences.PayloadGone(entry.Id));
        }

        return erased;
    }

    private static int Files(FileVault vault, IReadOnlyList<StoredEntry> entries, HashSet<EntryId> erasedByRight, List<Fault> faults, Action<int, int>? progress, CancellationToken stop)
    {
        var (hashes, foreign) = vault.List();
        var good = 0;
        for (var i = 0; i < hashes.Count; i++)
        {
            stop.ThrowIfCancellationRequested();
            var hash = vault.HashOf(vault.PathOf(hashes[i]));
            if (hash == hashes[i]) good++;
            else faults.Add(new Fault(hashes[i], "the content that was stored", hash is null ? StoreSentences.FileUnreadable : StoreSentences.FileChanged));
            progress?.Invoke(i + 1, hashes.Count);
        }

        var there = hashes.ToHashSet(StringComparer.Ordinal);
        // A file whose every entry was erased may be gone: that is what erasing is for. A content that is missing or damaged for any
        // other reason excuses nothing.
        var needed = entries.Where(stored => stored.Payload is not null || !erasedByRight.Contains(stored.Id)).SelectMany(stored => stored.Entry.Files).ToHashSet(StringComparer.Ordinal);
        var left = entries.SelectMany(stored => stored.Entry.Files).Distinct(StringComparer.Ordinal).Where(hash => !needed.Contains(hash));
        faults.AddRange(left.Where(there.Contains).Select(hash => new Fault(hash, "no file after its last entry was erased", StoreSentences.FileLeft)));
        faults.AddRange(needed.Where(hash => !there.Contains(hash)).Select(hash => new Fault(hash, "the file that was stored", StoreSentences.FileGone)));
        faults.AddRange(foreign.Select(path => new Fault(Path.GetFileName(path), "only files of the workspace", StoreSentences.FileForeign)));
        return good;
    }
}
