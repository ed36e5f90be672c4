using System.Diagnostics.CodeAnalysis;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Recomputing;

/// <summary>Notes what one run of a step reads, each once, in order.</summary>
internal sealed class Reading(RecomputeGraph graph) : IReads
{
    private readonly HashSet<Node> seen = [];
    private bool closed;

    public List<Node> Read { get; } = [];

    public void Close() => closed = true;

    TValue IReads.Read<TKey, TValue>(InputTable<TKey, TValue> input, TKey key)
    {
        var node = Note(graph.Inputs(input).At(key));
        Guard.That(node.Present, "input '" + input.Name + "' to hold " + InputTable<TKey, TValue>.KeyText(key) + " (TryRead asks for what may be absent)");
        return node.Value!;
    }

    public bool TryRead<TKey, TValue>(InputTable<TKey, TValue> input, TKey key, [MaybeNullWhen(false)] out TValue value)
        where TKey : notnull
    {
        var node = Note(graph.Inputs(input).At(key));
        value = node.Value;
        return node.Present;
    }

    public IReadOnlyList<TKey> Keys<TKey, TValue>(InputTable<TKey, TValue> input)
        where TKey : notnull => Note(graph.Inputs(input)).Keys;

    TValue IReads.Read<TKey, TValue>(Step<TKey, TValue> step, TKey key)
    {
        var node = graph.Steps(step).At(key);
        Guard.That(!closed, "a step to read before it returns");
        node.Refresh();
        return Note(node).Value!;
    }

    private TNode Note<TNode>(TNode node)
        where TNode : Node
    {
        Guard.That(!closed, "a step to read before it returns");
        if (seen.Add(node)) Read.Add(node);
        return node;
    }
}
