namespace Lidoff.Evidence.Recomputing;

/// <summary>All values of one step, with what was done for them.</summary>
internal sealed class StepNodes<TKey, TValue>(RecomputeGraph graph, Step<TKey, TValue> step) : ICounted
    where TKey : notnull
{
    private readonly Dictionary<TKey, StepNode<TKey, TValue>> nodes = [];

    public RecomputeGraph Graph => graph;

    public Step<TKey, TValue> Step => step;

    /// <summary>Asked once: hashing assemblies is not free.</summary>
    public string Version { get; } = step.Version;

    public long Computed { get; set; }

    public long CutOff { get; set; }

    public long Checked { get; set; }

    public long Reused { get; set; }

    public StepCounts Counts => new(step.Name, Computed, CutOff, Checked, Reused);

    public StepNode<TKey, TValue> At(TKey key)
    {
        if (!nodes.TryGetValue(key, out var node)) nodes.Add(key, node = new(this, key));
        return node;
    }

    public void ResetCounts() => Computed = CutOff = Checked = Reused = 0;
}
