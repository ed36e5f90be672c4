using System.Globalization;

namespace Lidoff.Evidence.Recomputing;

/// <summary>Names a set of inputs of a graph: entries, catalogue versions, settings. It holds nothing itself; the graph does.</summary>
/// <typeparam name="TKey">What one input is known by. Value equality; strings are ordered ordinally, others by their own order.</typeparam>
/// <typeparam name="TValue">An immutable value with value equality: setting an equal value changes nothing.</typeparam>
public sealed class InputTable<TKey, TValue>
    where TKey : notnull
{
    /// <summary>A table under <paramref name="name"/>, unique in its graph.</summary>
    /// <param name="name">Unique among the graph's tables.</param>
    /// <param name="hash">
    /// Hash of a value that is the same on every machine and every run (an entry's id, a file's SHA-256). Only
    /// <see cref="RecomputeGraph.KeyOf"/> needs it. Default: none.
    /// </param>
    /// <param name="order">Order of <see cref="IReads.Keys"/>. Default: ordinal for strings, the type's own order otherwise.</param>
    public InputTable(string name, Func<TValue, string>? hash = null, IComparer<TKey>? order = null)
    {
        Name = name;
        Hash = hash;
        Order = order ?? (typeof(TKey) == typeof(string) ? (IComparer<TKey>)StringComparer.Ordinal : Comparer<TKey>.Default);
    }

    /// <summary>Unique among the graph's tables.</summary>
    public string Name { get; }

    internal Func<TValue, string>? Hash { get; }

    internal IComparer<TKey> Order { get; }

    internal static string KeyText(TKey key) => Convert.ToString(key, CultureInfo.InvariantCulture) ?? "";
}
