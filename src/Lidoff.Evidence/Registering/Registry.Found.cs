using System.Diagnostics.CodeAnalysis;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Registering;

/// <summary>Items in ordinal order of their names, each name once.</summary>
public sealed class Registry<T>
    where T : class
{
    private readonly Dictionary<string, T> byName = new(StringComparer.Ordinal);

    internal Registry(IReadOnlyList<T> items, Func<T, string> name)
    {
        foreach (var item in items)
            Guard.That(byName.TryAdd(name(item), item), "one " + typeof(T).Name + " under the name '" + name(item) + "'");
        Items = [.. items.OrderBy(name, StringComparer.Ordinal)];
    }

    /// <summary>All of them.</summary>
    public IReadOnlyList<T> Items { get; }

    /// <summary>The item of that name, compared ordinally.</summary>
    public bool TryFind(string name, [MaybeNullWhen(false)] out T item) => byName.TryGetValue(name, out item);
}
