using Lidoff.Evidence.Entries;

namespace Lidoff.Evidence.Folding;

/// <summary>
/// What supersede, undo and erase make of the entries they name. A function of the set of entries and who had seen what;
/// it costs by the number of controls, not of entries.
/// </summary>
internal sealed class ControlRules(IReadOnlyDictionary<EntryId, FoldNode> nodes)
{
    private readonly Dictionary<(EntryId Early, EntryId Late), bool> knownOrder = [];

    /// <summary>Fates of all entries that some control names, and the concurrent supersedes. <paramref name="controls"/> come in fold order.</summary>
    public (Dictionary<FoldNode, (EntryFate Fate, IReadOnlyList<EntryId> By)> Fates, IReadOnlyList<ConcurrentSupersede> Concurrent) Settle(IReadOnlyList<FoldNode> controls)
    {
        var undone = Undone(controls);
        var erased = Named(controls.Where(c => c.Is(ControlKinds.Erase)));
        var (hidden, concurrent) = Superseded(controls, undone);

        var fates = new Dictionary<FoldNode, (EntryFate, IReadOnlyList<EntryId>)>();
        Add(fates, hidden, EntryFate.Superseded);
        Add(fates, undone, EntryFate.Undone);
        // Erasing cannot be undone: whatever else was said about the entry, its content is gone.
        Add(fates, erased, EntryFate.Erased);
        return (fates, concurrent);
    }

    /// <summary>Entries came in between others: what was found out about who had seen what may have lacked them.</summary>
    public void Forget() => knownOrder.Clear();

    /// <summary>True when the writer of <paramref name="late"/> had seen <paramref name="early"/>.</summary>
    public bool Before(FoldNode early, FoldNode late)
    {
        if (early.Position >= late.Position) return false;
        if (late.KnowsAll || early.Entry.Chain == late.Entry.Chain) return true;
        if (knownOrder.TryGetValue((early.Id, late.Id), out var known)) return known;

        var seen = new HashSet<EntryId>();
        var open = new Stack<FoldNode>([late]);
        var found = false;
        while (!found && open.TryPop(out var node))
        {
            foreach (var link in CausalOrder.Links(node.Entry))
            {
                if (!nodes.TryGetValue(link, out var parent) || parent.Position < early.Position || !seen.Add(link)) continue;
                if (parent == early || parent.KnowsAll)
                {
                    found = true;
                    break;
                }

                open.Push(parent);
            }
        }

        knownOrder.Add((early.Id, late.Id), found);
        return found;
    }

    private static void Add(Dictionary<FoldNode, (EntryFate, IReadOnlyList<EntryId>)> fates, Dictionary<FoldNode, List<FoldNode>> by, EntryFate fate)
    {
        foreach (var (node, controls) in by) fates[node] = (fate, controls.OrderBy(c => c.Position).Select(c => c.Id).Distinct().ToList());
    }

    /// <summary>Targets lie before the control that names them, so going backwards meets every undo after all that could undo it.</summary>
    private Dictionary<FoldNode, List<FoldNode>> Undone(IReadOnlyList<FoldNode> controls)
    {
        var undone = new Dictionary<FoldNode, List<FoldNode>>();
        foreach (var undo in controls.Reverse().Where(c => c.Is(ControlKinds.Undo)))
        {
            if (undone.ContainsKey(undo)) continue;
            foreach (var target in Targets(undo)) ListIn(undone, target).Add(undo);
        }

        return undone;
    }

    private Dictionary<FoldNode, List<FoldNode>> Named(IEnumerable<FoldNode> controls)
    {
        var named = new Dictionary<FoldNode, List<FoldNode>>();
        foreach (var control in controls)
        {
            foreach (var target in Targets(control)) ListIn(named, target).Add(control);
        }

        return named;
    }

    /// <summary>One hand's doing: <paramref name="New"/> in the place of <paramref name="Old"/>. Defaults have no <paramref name="By"/>.</summary>
    private readonly record struct Step(FoldNode By, FoldNode Old, FoldNode New);

    private (Dictionary<FoldNode, List<FoldNode>> Hidden, IReadOnlyList<ConcurrentSupersede> Concurrent) Superseded(
        IReadOnlyList<FoldNode> controls, Dictionary<FoldNode, List<FoldNode>> undone)
    {
        var steps = new List<Step>();
        foreach (var control in controls.Where(c => c.Is(ControlKinds.Supersede) && !undone.ContainsKey(c)))
        {
            // Where the better entry was taken back, the older one counts again: otherwise neither would.
            // A control is no sighting: it can neither take a place nor have its own taken.
            if (Targets(control) is [{ IsControl: false } old, { IsControl: false } better] && old != better && !undone.ContainsKey(better)) steps.Add(new(control, old, better));
        }

        var concurrent = new List<(FoldNode Old, ConcurrentSupersede Report)>();
        foreach (var rivals in steps.GroupBy(s => s.Old).Select(g => g.ToList()).Where(g => g.Count > 1).ToList())
        {
            // Whoever had seen the first and still put another in the place of the oldest meant the first to go as well. The
            // newest such hand is enough to say so.
            foreach (var first in rivals)
            {
                var later = rivals.FindLast(r => r.New != first.New && Before(first.By, r.By));
                if (later.By is not null) steps.Add(new(later.By, first.New, later.New));
            }

            var open = rivals.Where(r => !rivals.Exists(other => Before(r.By, other.By))).ToList();
            if (open.Select(r => r.New).Distinct().Count() > 1) concurrent.Add((rivals[0].Old, Report(rivals[0].Old, open.Select(r => (r.By, r.New)))));
        }

        var hidden = new Dictionary<FoldNode, List<FoldNode>>();
        var into = steps.ToLookup(s => s.New);
        foreach (var step in steps)
        {
            // An entry that somebody chose as the better one, without the replacing hand knowing of that choice, stays.
            var unseen = into[step.Old].Where(choice => !Before(choice.By, step.By)).ToList();
            if (unseen.Count == 0) ListIn(hidden, step.Old).Add(step.By);
            else if (unseen.Find(choice => !Before(step.By, choice.By)) is { By: not null } rival) concurrent.Add((step.Old, Report(step.Old, [(rival.By, step.Old), (step.By, step.New)])));
        }

        return (hidden, concurrent.OrderBy(c => c.Old.Position).Select(c => c.Report).Distinct().ToList());
    }

    private static ConcurrentSupersede Report(FoldNode old, IEnumerable<(FoldNode By, FoldNode New)> open)
    {
        var inOrder = open.OrderBy(o => o.By.Position).ToList();
        return new(old.Id, inOrder.Select(o => o.By.Id).ToValueList(), inOrder.Select(o => o.New.Id).ToValueList());
    }

    private List<FoldNode> Targets(FoldNode control)
    {
        var targets = new List<FoldNode>();
        foreach (var id in control.Entry.Targets)
        {
            if (nodes.TryGetValue(id, out var target)) targets.Add(target);
        }

        return targets;
    }

    private static List<FoldNode> ListIn(Dictionary<FoldNode, List<FoldNode>> lists, FoldNode node)
    {
        if (!lists.TryGetValue(node, out var list)) lists.Add(node, list = []);
        return list;
    }
}
