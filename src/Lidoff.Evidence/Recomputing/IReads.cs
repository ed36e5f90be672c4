using System.Diagnostics.CodeAnalysis;

namespace Lidoff.Evidence.Recomputing;

/// <summary>
/// Through this a step reads, and by it the graph knows what the step hangs on. It is good only while its
/// <see cref="Step{TKey, TValue}.Compute"/> runs: a lazy query that outlives it throws.
/// </summary>
public interface IReads
{
    /// <summary>An input that is there; an absent one is a programmer's mistake and throws.</summary>
    TValue Read<TKey, TValue>(InputTable<TKey, TValue> input, TKey key)
        where TKey : notnull;

    /// <summary>An input that may be absent. Its absence is a read too: when it appears, the step runs again.</summary>
    bool TryRead<TKey, TValue>(InputTable<TKey, TValue> input, TKey key, [MaybeNullWhen(false)] out TValue value)
        where TKey : notnull;

    /// <summary>The keys present in an input table, in the table's order. Only a key that comes or goes makes the step run again.</summary>
    IReadOnlyList<TKey> Keys<TKey, TValue>(InputTable<TKey, TValue> input)
        where TKey : notnull;

    /// <summary>Another step's value, computed when it is not there yet or no longer holds.</summary>
    TValue Read<TKey, TValue>(Step<TKey, TValue> step, TKey key)
        where TKey : notnull;
}
