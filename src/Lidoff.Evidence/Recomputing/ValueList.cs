using System.Collections;
using System.Runtime.CompilerServices;

namespace Lidoff.Evidence.Recomputing;

/// <summary>
/// An immutable list that equals another with equal items in the same order. Records that hold one keep value equality,
/// and so steps that give one can stop early.
/// </summary>
[CollectionBuilder(typeof(ValueList), nameof(ValueList.Of))]
public sealed class ValueList<T> : IReadOnlyList<T>, IEquatable<ValueList<T>>
{
    private readonly T[] items;

    internal ValueList(T[] items) => this.items = items;

    /// <summary>No items.</summary>
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
        var hash = default(HashCode);
        foreach (var item in items) hash.Add(item);
        return hash.ToHashCode();
    }

    /// <inheritdoc/>
    public IEnumerator<T> GetEnumerator() => ((IEnumerable<T>)items).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => items.GetEnumerator();
}

/// <summary>Makes <see cref="ValueList{T}"/>s.</summary>
public static class ValueList
{
    /// <summary>The items in the order given, copied.</summary>
    public static ValueList<T> Of<T>(ReadOnlySpan<T> items) => items.IsEmpty ? ValueList<T>.Empty : new(items.ToArray());

    /// <summary>The items in the order given, copied.</summary>
    public static ValueList<T> ToValueList<T>(this IEnumerable<T> items) => new([.. items]);
}
