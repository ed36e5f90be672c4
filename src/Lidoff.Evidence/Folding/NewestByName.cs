using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Folding;

/// <summary>For kinds of which the newest entry of a name counts.</summary>
public static class NewestByName
{
    /// <summary>The newest live entry of each name, in natural order of the names.</summary>
    public static IReadOnlyList<Sighting<T>> Newest<T>(this IDossierView view, Func<T, string> name)
        where T : class
    {
        var newest = new Dictionary<string, Sighting<T>>(StringComparer.Ordinal);
        foreach (var sighting in Guard.NotNull(view).Live<T>()) newest[name(sighting.Value)] = sighting;
        return [.. newest.OrderBy(pair => pair.Key, NaturalOrder.Instance).ThenBy(pair => pair.Key, StringComparer.Ordinal).Select(pair => pair.Value)];
    }
}
