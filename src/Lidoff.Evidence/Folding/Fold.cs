using Lidoff.Evidence.Entries;

namespace Lidoff.Evidence.Folding;

/// <summary>
/// Turns a dossier's entries into what counts. The outcome depends on the set of entries alone; entries whose writers had
/// seen everything before cost only themselves. One thread at a time; the views it hands out may be read by any.
/// </summary>
public sealed class Fold
{
    /// <summary>Version of these rules; a snapshot made under others is not used.</summary>
    public const int Rules = 1;

    /// <summary>How many past changes <see cref="Since"/> can still tell.</summary>
    public const int ChangesKept = 1000;

    private readonly string dossier;
    private readonly EvidenceKinds kinds;
    private readonly Dictionary<EntryId, FoldNode> nodes = [];
    private readonly Dictionary<Type, LiveList> live = [];
    private readonly Queue<FoldChange> changes = new();
    private readonly ControlRules rules;
    private readonly HashSet<EntryId> heads = [];
    private readonly List<FoldNode> controls = [];
    private List<FoldNode> order = [];
    private HashSet<FoldNode> controlled = [];
    private IReadOnlyList<ConcurrentSupersede> concurrent = [];

    /// <summary>An empty fold of a dossier, reading payloads by <paramref name="kinds"/>.</summary>
    public Fold(string dossier, EvidenceKinds kinds)
    {
        this.dossier = dossier;
        this.kinds = kinds;
        rules = new(nodes);
        View = new DossierView(dossier, 0, [], new Dictionary<Type, LiveList>(), []);
    }

    /// <summary>What the entries so far amount to.</summary>
    public IDossierView View { get; private set; }

    /// <summary>How often entries came in between older ones, so that all had to be put in order again.</summary>
    public int Reorderings { get; private set; }

    /// <summary>Takes in entries, in any order; those already here and those of other dossiers are passed over.</summary>
    public FoldChange Apply(IEnumerable<StoredEntry> arrived)
    {
        var fresh = new Dictionary<EntryId, FoldNode>();
        foreach (var stored in arrived)
        {
            if (stored.Entry.Dossier == dossier && !nodes.ContainsKey(stored.Id) && !fresh.ContainsKey(stored.Id)) fresh.Add(stored.Id, new(stored, kinds));
        }

        return Apply(CausalOrder.Sort(fresh.Values, n => n.Entry));
    }

    /// <summary>What changed after the view of version <paramref name="version"/>; null when that is too long ago to tell.</summary>
    public FoldChange? Since(long version)
    {
        if (version == View.Version) return new(version, version, [], [], false);
        var later = changes.Where(c => c.From >= version).ToList();
        return later.Count > 0 && later[0].From == version ? later.Aggregate((a, b) => a.Then(b)) : null;
    }

    /// <summary>The order found, for a snapshot; see <see cref="FoldSnapshot"/>.</summary>
    internal IReadOnlyList<FoldNode> Order => order;

    /// <summary>Takes in all entries of an empty fold in an order that is known to be the right one.</summary>
    internal FoldChange ApplyInOrder(IReadOnlyList<StoredEntry> sorted) => Apply(sorted.Select(s => new FoldNode(s, kinds)).ToList());

    private FoldChange Apply(IReadOnlyList<FoldNode> fresh)
    {
        if (fresh.Count == 0) return new(View.Version, View.Version, [], [], false);
        var before = order;
        var appended = ComeAfterAll(fresh);
        foreach (var node in fresh) nodes.Add(node.Id, node);
        if (appended)
        {
            Append(fresh);
        }
        else
        {
            Reorderings++;
            order = [];
            heads.Clear();
            controls.Clear();
            rules.Forget();
            Append(CausalOrder.Sort(nodes.Values, n => n.Entry));
        }

        var touched = Settle(fresh, appended);
        var change = new FoldChange(
            View.Version,
            View.Version + 1,
            touched.Where(t => t.Node.Counts && t.Was is null).OrderBy(t => t.Node.Position).Select(t => t.Node.Live!).ToList(),
            touched.Where(t => !t.Node.Counts && t.Was is not null).OrderBy(t => t.Node.Position).Select(t => t.Was!).ToList(),
            !appended && before.Count > 0);
        Show(change, fresh);
        return change;
    }

    /// <summary>True when every fresh entry's writer had seen all that is here, so that the order only grows at its end.</summary>
    private bool ComeAfterAll(IReadOnlyList<FoldNode> fresh)
    {
        if (order.Count == 0) return true;
        var after = new HashSet<EntryId>();
        foreach (var node in fresh)
        {
            var links = CausalOrder.Links(node.Entry).ToHashSet();
            if (!links.Overlaps(after) && !heads.IsSubsetOf(links)) return false;
            after.Add(node.Id);
        }

        return true;
    }

    private void Append(IReadOnlyList<FoldNode> sorted)
    {
        foreach (var node in sorted)
        {
            var links = CausalOrder.Links(node.Entry).ToHashSet();
            node.Position = order.Count;
            node.KnowsAll = heads.IsSubsetOf(links);
            order.Add(node);
            heads.ExceptWith(links);
            heads.Add(node.Id);
            if (node.IsControl) controls.Add(node);
        }
    }

    /// <summary>Gives every entry its fate and says which ones may have changed and what counted of them before.</summary>
    private List<(FoldNode Node, LiveEntry? Was)> Settle(IReadOnlyList<FoldNode> fresh, bool appended)
    {
        var touched = new List<(FoldNode, LiveEntry?)>();
        var isFresh = fresh.ToHashSet();
        if (!appended || fresh.Any(n => n.IsControl))
        {
            var (fates, found) = rules.Settle(controls);
            concurrent = found;
            foreach (var node in controlled.Union(fates.Keys))
            {
                if (!isFresh.Contains(node)) touched.Add((node, node.Counts ? node.Live : null));
                if (fates.TryGetValue(node, out var settled)) node.Settle(settled.Fate, settled.By);
                else node.Settle(node.OwnFate, []);
            }

            controlled = [.. fates.Keys];
        }

        touched.AddRange(fresh.Select(n => (n, (LiveEntry?)null)));
        return touched;
    }

    private void Show(FoldChange change, IReadOnlyList<FoldNode> fresh)
    {
        foreach (var type in change.Types)
        {
            // Only where all that came stands at the end can the list be prolonged; otherwise it is picked out anew.
            var old = live.GetValueOrDefault(type)?.Items ?? [];
            var added = change.Added.Where(e => e.Type == type).ToList();
            var grows = !change.Reordered && change.Removed.All(e => e.Type != type) && added.All(e => nodes[e.Id].Position >= order.Count - fresh.Count);
            live[type] = new(grows ? [.. old, .. added] : order.Where(n => n.Counts && n.Live!.Type == type).Select(n => n.Live!).ToArray());
        }

        if (change.Reordered)
        {
            foreach (var type in live.Keys.Except(change.Types).ToList())
            {
                var items = order.Where(n => n.Counts && n.Live!.Type == type).Select(n => n.Live!).ToArray();
                if (!items.SequenceEqual(live[type].Items, ReferenceEqualityComparer.Instance)) live[type] = new(items);
            }
        }

        changes.Enqueue(change);
        if (changes.Count > ChangesKept) changes.Dequeue();
        View = new DossierView(dossier, change.To, order.Select(n => n.Folded).ToArray(), new Dictionary<Type, LiveList>(live), concurrent);
    }
}
