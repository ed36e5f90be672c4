using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Folding;

/// <summary>
/// Where an entry that was put right stands: what is corrected keeps the place and the time of what was first noted, and what spoke of
/// the first speaks of the last. Asked for once for a view.
/// </summary>
public sealed class FirstOfChain
{
    private readonly Dictionary<EntryId, EntryId> before = [];
    private readonly Dictionary<EntryId, (Entry Entry, int Place)> all = [];

    /// <summary>The chains of a view.</summary>
    public FirstOfChain(IDossierView view)
    {
        foreach (var folded in Guard.NotNull(view).Entries)
        {
            all[folded.Entry.Id] = (folded.Entry, all.Count);
            if (folded.Entry.Kind == ControlKinds.Supersede && folded.Fate == EntryFate.Live && folded.Entry.Targets is [var old, var by] && old != by) before.TryAdd(by, old);
        }
    }

    /// <summary>The entry that was noted first and was put right until it became <paramref name="id"/>; itself where nothing was.</summary>
    public EntryId Of(EntryId id)
    {
        // Two that took each other's place would go round for ever.
        var seen = new HashSet<EntryId>();
        while (seen.Add(id) && before.TryGetValue(id, out var old)) id = old;
        return id;
    }

    /// <summary>Place of the first in fold order, from 0; -1 where the dossier has no such entry.</summary>
    public int Place(EntryId id) => all.TryGetValue(Of(id), out var found) ? found.Place : -1;

    /// <summary>When the first was noted, UTC.</summary>
    public DateTimeOffset At(EntryId id) => all[Of(id)].Entry.At;

    /// <summary>Live sightings in the order in which what they say was first noted.</summary>
    public IReadOnlyList<Sighting<T>> Ordered<T>(IReadOnlyList<Sighting<T>> live)
        where T : class => [.. Guard.NotNull(live).OrderBy(each => Place(each.Id))];

    /// <summary>The one of them that was first noted last; null where there is none.</summary>
    public Sighting<T>? Last<T>(IReadOnlyList<Sighting<T>> live)
        where T : class => Guard.NotNull(live).MaxBy(each => Place(each.Id));
}
