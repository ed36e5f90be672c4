namespace Lidoff.Evidence.Entries;

/// <summary>Makes <see cref="ValueList{T}"/> from spans and sequences.</summary>
public static class ValueListBuilder
{
    /// <summary>Copies the items into a list.</summary>
    public static ValueList<T> Create<T>(ReadOnlySpan<T> items) => items.IsEmpty ? ValueList<T>.Empty : new(items.ToArray());

    /// <summary>Copies the items of any sequence, in its order.</summary>
    public static ValueList<T> ToValueList<T>(this IEnumerable<T> items) => Create<T>(items.ToArray());
}
