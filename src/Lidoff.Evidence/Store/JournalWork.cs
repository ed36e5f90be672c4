using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Store;

/// <summary>
/// What appending and merging mean, the same for every storage. Runs inside the storage's transaction: a fault handed back
/// means that the transaction must be rolled back.
/// </summary>
internal static class JournalWork
{
    public static Outcome<IReadOnlyList<StoredEntry>> Append(IJournalTables tables, WriterSeed writer, DateTimeOffset now, IReadOnlyList<EntryDraft> batch)
    {
        var sealedBatch = new List<StoredEntry>(batch.Count);
        var faults = new List<Fault>();
        foreach (var draft in batch)
        {
            Check(draft, faults);
            var targets = Targets(tables, draft, sealedBatch, faults);
            if (faults.Count > 0) continue;

            // The chain's end is read back rather than remembered: after a commit whose answer was lost, memory could be wrong
            // and the next entry would fork its own chain.
            var chain = writer.Chain(draft.Dossier);
            var last = tables.Last(chain);
            var seq = (last?.Seq ?? 0) + 1;
            var heads = tables.Heads(draft.Dossier).Where(head => head != last?.Id);
            var stored = EntryCodec.Seal(draft, targets, chain, seq, last?.Id, heads, now, writer.Salt(chain, seq));
            Put(tables, stored);
            sealedBatch.Add(stored);
        }

        return faults.Count > 0 ? Outcome<IReadOnlyList<StoredEntry>>.Failed(faults) : sealedBatch;
    }

    public static Outcome<MergeSummary> Merge(IJournalTables tables, IReadOnlyList<StoredEntry> incoming, ErasureRule erasures)
    {
        var fresh = new List<StoredEntry>();
        var seen = new HashSet<EntryId>();
        foreach (var entry in incoming)
        {
            if (seen.Add(entry.Id) && tables.Find(entry.Id) is null) fresh.Add(entry);
        }

        var ordered = CausalOrder.Sort(fresh, e => e.Entry);
        var faults = new List<Fault>();
        var erased = 0;
        var refused = new HashSet<EntryId>();
        foreach (var entry in ordered)
        {
            // What follows a refused entry falls with it; one sentence about the first is enough.
            if (CausalOrder.Links(entry.Entry).Any(refused.Contains)) refused.Add(entry.Id);
            else if (Refusal(tables, entry) is { } fault)
            {
                faults.Add(fault);
                refused.Add(entry.Id);
            }
            else erased += Put(tables, entry);
        }

        faults.AddRange(ordered.Where(e => e.Payload is null && !tables.IsErased(e.Id)).Select(e => StoreSentences.PayloadMissing(e.Id)));
        if (faults.Count == 0 && erased > 0 && erasures == ErasureRule.Refuse) faults.Add(StoreSentences.WouldErase(erased));
        return faults.Count > 0 ? Outcome<MergeSummary>.Failed(faults) : new MergeSummary(fresh.Count, seen.Count - fresh.Count, erased);
    }

    /// <summary>Adds an entry whose links are all there; the number of payloads it removed that had been readable before.</summary>
    private static int Put(IJournalTables tables, StoredEntry stored)
    {
        var entry = stored.Entry;
        tables.Insert(tables.IsErased(entry.Id) ? stored with { Payload = null } : stored);
        if (entry.Previous is { } previous) tables.RemoveHead(entry.Dossier, previous);
        foreach (var head in entry.Heads) tables.RemoveHead(entry.Dossier, head);
        tables.AddHead(entry.Dossier, entry.Id);

        if (entry.Kind != ControlKinds.Erase || entry.KindVersion > ControlKinds.Version || entry.Format > EntryCodec.Format) return 0;
        return entry.Targets.Count(tables.Erase);
    }

    private static void Check(EntryDraft draft, List<Fault> faults)
    {
        if (!DossierName.Fits(draft.Dossier)) faults.Add(StoreSentences.DossierName(draft.Dossier));
        if (draft.Payload.Length > EntryCodec.LargestPayload) faults.Add(StoreSentences.PayloadTooLarge(draft.Kind, draft.Payload.Length));
    }

    private static List<EntryId> Targets(IJournalTables tables, EntryDraft draft, List<StoredEntry> before, List<Fault> faults)
    {
        var targets = new List<EntryId>(draft.Targets.Count);
        foreach (var target in draft.Targets)
        {
            if (target.Entry is { } id)
            {
                if (tables.Find(id)?.Dossier == draft.Dossier) targets.Add(id);
                else faults.Add(StoreSentences.NoSuchTarget(draft.Dossier, id.Hex));
            }
            else
            {
                Guard.That(faults.Count > 0 || (target.Draft >= 0 && target.Draft < before.Count), "a target among the earlier drafts of its batch");
                if (faults.Count == 0) targets.Add(before[target.Draft].Id);
            }
        }

        return targets;
    }

    private static Fault? Refusal(IJournalTables tables, StoredEntry stored)
    {
        var entry = stored.Entry;
        if (tables.At(entry.Chain, entry.Seq) is { } other && other != entry.Id) return StoreSentences.Fork(entry, other);
        if (stored.Payload is { } payload && !EntryCodec.Belongs(entry, payload.Span)) return StoreSentences.PayloadLies(entry.Id);
        if (entry.Previous is { } previous)
        {
            if (tables.Find(previous) is not { } before) return StoreSentences.LinkMissing(entry.Id, previous);
            if (before.Chain != entry.Chain || before.Seq != entry.Seq - 1 || before.Dossier != entry.Dossier) return StoreSentences.ChainBroken(entry);
        }

        foreach (var head in entry.Heads)
        {
            if (tables.Find(head)?.Dossier != entry.Dossier) return StoreSentences.LinkMissing(entry.Id, head);
        }

        return null;
    }
}
