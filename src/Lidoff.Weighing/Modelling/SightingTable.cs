using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Evidence.Recomputing;
using Lidoff.Numbers.Failing;

namespace Lidoff.Weighing.Modelling;

/// <summary>
/// The live sightings of one type as inputs of the graph, grouped by what they are about (a spot, a picture, a name), so that a
/// new sighting of one spot disturbs no other. Within a group they stand in fold order.
/// </summary>
public sealed class SightingTable<T> : ISightingTable
    where T : class
{
    private readonly Func<T, IEnumerable<string>> about;
    private readonly Dictionary<string, Dictionary<EntryId, Sighting<T>>> groups = new(StringComparer.Ordinal);

    /// <summary>A table under <paramref name="name"/>; <paramref name="about"/> gives the groups a sighting belongs to.</summary>
    public SightingTable(string name, Func<T, IEnumerable<string>> about)
    {
        this.about = about;
        Input = new InputTable<string, ValueList<Sighting<T>>>(name, list => string.Join(' ', list.Select(sighting => sighting.Id.Hex)));
    }

    /// <summary>The graph's side of it.</summary>
    public InputTable<string, ValueList<Sighting<T>>> Input { get; }

    /// <inheritdoc/>
    public Type Type => typeof(T);

    /// <summary>The sightings about <paramref name="key"/>, none where there are none; reading them makes a step hang on them.</summary>
    public IReadOnlyList<Sighting<T>> About(string key, IReads reads) =>
        Guard.NotNull(reads).TryRead(Input, key, out var found) ? found : [];

    /// <summary>What there are sightings about, in ordinal order.</summary>
    public IReadOnlyList<string> Keys(IReads reads) => Guard.NotNull(reads).Keys(Input);

    /// <inheritdoc/>
    public void Feed(RecomputeGraph graph, IEnumerable<LiveEntry> added, IEnumerable<LiveEntry> removed, Func<EntryId, int> position, bool reordered)
    {
        var touched = new SortedSet<string>(StringComparer.Ordinal);
        foreach (var entry in removed)
        {
            foreach (var key in about((T)entry.Value).Distinct(StringComparer.Ordinal))
            {
                if (groups.TryGetValue(key, out var group) && group.Remove(entry.Id)) touched.Add(key);
            }
        }

        foreach (var entry in added)
        {
            var sighting = new Sighting<T>(entry.Entry, entry.Specimen, (T)entry.Value);
            foreach (var key in about(sighting.Value).Distinct(StringComparer.Ordinal))
            {
                if (!groups.TryGetValue(key, out var group)) groups.Add(key, group = []);
                group[entry.Id] = sighting;
                touched.Add(key);
            }
        }

        foreach (var key in reordered ? groups.Keys.Order(StringComparer.Ordinal).ToList() : [.. touched])
        {
            if (groups[key].Count > 0)
            {
                graph.Set(Input, key, [.. groups[key].Values.OrderBy(sighting => position(sighting.Id))]);
            }
            else
            {
                groups.Remove(key);
                graph.Remove(Input, key);
            }
        }
    }
}
