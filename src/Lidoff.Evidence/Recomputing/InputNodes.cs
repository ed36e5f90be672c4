namespace Lidoff.Evidence.Recomputing;

/// <summary>All inputs of one table; as a node of its own it stands for which keys are present.</summary>
internal sealed class InputNodes<TKey, TValue>(InputTable<TKey, TValue> table) : Node
    where TKey : notnull
{
    private readonly Dictionary<TKey, InputNode<TKey, TValue>> nodes = [];
    private TKey[]? keys;

    public object Table => table;

    public InputNode<TKey, TValue> At(TKey key)
    {
        if (!nodes.TryGetValue(key, out var node)) nodes.Add(key, node = new(table, key));
        return node;
    }

    /// <summary>Present keys in the table's order.</summary>
    public IReadOnlyList<TKey> Keys => keys ??= [.. nodes.Where(n => n.Value.Present).Select(n => n.Key).Order(table.Order)];

    /// <summary>A key came or went.</summary>
    public void KeysMoved(long revision)
    {
        keys = null;
        ChangedAt = revision;
        DoubtReaders();
    }

    public override void Refresh()
    {
    }

    public override bool Doubt() => false;

    public override string Hash() => DerivedKey.Of("keys", table.Name, "", [.. Keys.Select(InputTable<TKey, TValue>.KeyText)]);
}
