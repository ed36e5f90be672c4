using System.Security.Cryptography;
using System.Text;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Folding;

/// <summary>
/// The fold order of a dossier as bytes: a cache that spares the sorting. It is believed only under the key it was made
/// for, with its checksum right and with exactly the entries at hand, each after those it links to; otherwise it is passed over.
/// </summary>
public static class FoldSnapshot
{
    private const int HashBytes = 32;

    /// <summary>The key of a snapshot: what the writer's heads are, by which rules and kinds it was folded.</summary>
    public static string Key(IEnumerable<EntryId> heads, EvidenceKinds kinds) => EntryCodec.Hash(Encoding.UTF8.GetBytes(FormattableString.Invariant(
        $"fold {Fold.Rules} | {Guard.NotNull(kinds).Signature} | {string.Join(' ', heads.Order().Select(h => h.Hex))}")));

    /// <summary>Writes the order of a fold.</summary>
    public static byte[] Write(Fold fold, string key)
    {
        var body = Guard.NotNull(fold).Order.SelectMany(n => Convert.FromHexString(n.Id.Hex)).ToArray();
        return [.. Seal(key, body), .. body];
    }

    /// <summary>Folds all of a dossier's entries, by the snapshot's order where it can be believed.</summary>
    /// <param name="dossier">Short name.</param>
    /// <param name="kinds">The kinds that read payloads.</param>
    /// <param name="entries">Every entry of the dossier.</param>
    /// <param name="key">The key that a snapshot of exactly these entries has.</param>
    /// <param name="snapshot">The bytes kept under it; null where there are none.</param>
    public static Fold Open(string dossier, EvidenceKinds kinds, IReadOnlyList<StoredEntry> entries, string key, byte[]? snapshot)
    {
        var fold = new Fold(dossier, kinds);
        if (snapshot is not null && Sorted(entries, key, snapshot) is { } sorted) fold.ApplyInOrder(sorted);
        else fold.Apply(entries);
        return fold;
    }

    private static List<StoredEntry>? Sorted(IReadOnlyList<StoredEntry> entries, string key, ReadOnlySpan<byte> snapshot)
    {
        if (snapshot.Length != HashBytes * (entries.Count + 1)) return null;
        var body = snapshot[HashBytes..];
        if (!snapshot[..HashBytes].SequenceEqual(Seal(key, body))) return null;

        var byId = new Dictionary<EntryId, StoredEntry>(entries.Count);
        foreach (var entry in entries) byId[entry.Id] = entry;
        var done = new HashSet<EntryId>(entries.Count);
        var sorted = new List<StoredEntry>(entries.Count);
        for (var at = 0; at < body.Length; at += HashBytes)
        {
            if (!byId.TryGetValue(new(Convert.ToHexStringLower(body.Slice(at, HashBytes))), out var entry) || !done.Add(entry.Id)) return null;
            if (CausalOrder.Links(entry.Entry).Any(link => byId.ContainsKey(link) && !done.Contains(link))) return null;
            sorted.Add(entry);
        }

        return sorted;
    }

    private static byte[] Seal(string key, ReadOnlySpan<byte> body) => SHA256.HashData([.. Encoding.UTF8.GetBytes(key), .. body]);
}
