using Lidoff.Evidence.Entries;

namespace Lidoff.Evidence.Folding;

/// <summary>
/// The one order in which entries are folded: what an entry knew of (the one before it, the heads it had seen, its targets)
/// comes first, and of those that could come next the smallest id does. It depends on the set alone, never on arrival.
/// </summary>
public static class CausalOrder
{
    /// <summary>Sorts items of different ids; links to entries that are not among them count for nothing.</summary>
    public static IReadOnlyList<T> Sort<T>(IReadOnlyCollection<T> items, Func<T, Entry> entryOf)
    {
        var waiting = new Dictionary<EntryId, (T Item, int Links)>(items.Count);
        foreach (var item in items) waiting.Add(entryOf(item).Id, (item, 0));

        var followers = new Dictionary<EntryId, List<EntryId>>();
        var ready = new PriorityQueue<EntryId, EntryId>();
        foreach (var item in items)
        {
            var entry = entryOf(item);
            var links = 0;
            foreach (var earlier in Links(entry).Distinct())
            {
                if (!waiting.ContainsKey(earlier)) continue;
                if (!followers.TryGetValue(earlier, out var list)) followers.Add(earlier, list = []);
                list.Add(entry.Id);
                links++;
            }

            waiting[entry.Id] = (item, links);
            if (links == 0) ready.Enqueue(entry.Id, entry.Id);
        }

        var sorted = new List<T>(items.Count);
        while (ready.TryDequeue(out var id, out _))
        {
            sorted.Add(waiting[id].Item);
            foreach (var follower in followers.GetValueOrDefault(id, []))
            {
                var (item, links) = waiting[follower];
                waiting[follower] = (item, links - 1);
                if (links == 1) ready.Enqueue(follower, follower);
            }
        }

        // An id is a hash over its links, so that a circle of entries cannot be made; all have come out.
        return sorted;
    }

    /// <summary>The entries that <paramref name="entry"/> had seen when it was written.</summary>
    public static IEnumerable<EntryId> Links(Entry entry)
    {
        if (entry.Previous is { } previous) yield return previous;
        foreach (var head in entry.Heads) yield return head;
        foreach (var target in entry.Targets) yield return target;
    }
}
