using System.Collections;
using System.Runtime.CompilerServices;

namespace Lidoff.Evidence.Entries;

/// <summary>
/// An immutable list that is equal to another when their items are: what a payload record holds, so that the record keeps
/// value equality and recomputing can stop where nothing changed. Written as a collection expression: <c>[a, b]</c>.
/// </summary>
[CollectionBuilder(typeof(ValueListBuilder), nameof(ValueListBuilder.Create))]
public sealed class ValueList<T> : IReadOnlyList<T>, IEquatable<ValueList<T>>
{
    private readonly T[] items;

    internal ValueList(T[] items) => this.items = items;

    /// <summary>The list without items.</summary>
    public static ValueList<T> Empty { get; } = new([]);

    /// <inheritdoc/>
    public int Count => items.Length;

    /// <inheritdoc/>
    public T this[int index] => items[index];

    /// <inheritdoc/>
    public bool Equals(ValueList<T>? other) => other is not null && items.AsSpan().SequenceEqual(other.items);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as ValueList<T>);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = new HashCode();
        foreach (var item in items) hash.Add(item);
        return hash.ToHashCode();
    }

    /// <inheritdoc/>
    public IEnumerator<T> GetEnumerator() => ((IEnumerable<T>)items).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <inheritdoc/>
    public override string ToString() => "[" + string.Join(", ", items) + "]";
}
