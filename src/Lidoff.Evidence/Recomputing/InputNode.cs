using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Recomputing;

/// <summary>One input, present or absent; absent ones stand here too once somebody looked for them.</summary>
internal sealed class InputNode<TKey, TValue>(InputTable<TKey, TValue> table, TKey key) : Node
    where TKey : notnull
{
    public bool Present { get; private set; }

    public TValue? Value { get; private set; }

    /// <summary>True when this changed anything.</summary>
    public bool Set(TValue value, long revision)
    {
        if (Present && EqualityComparer<TValue>.Default.Equals(Value, value)) return false;
        (Present, Value, ChangedAt) = (true, value, revision);
        DoubtReaders();
        return true;
    }

    /// <summary>True when this changed anything.</summary>
    public bool Remove(long revision)
    {
        if (!Present) return false;
        (Present, Value, ChangedAt) = (false, default, revision);
        DoubtReaders();
        return true;
    }

    public override void Refresh()
    {
    }

    public override bool Doubt() => false;

    public override string Hash()
    {
        Guard.That(table.Hash is not null, "input table '" + table.Name + "' to have a hash, since a derived key leans on it");
        return DerivedKey.Of("input", table.Name, InputTable<TKey, TValue>.KeyText(key), Present ? [table.Hash(Value!)] : []);
    }
}
