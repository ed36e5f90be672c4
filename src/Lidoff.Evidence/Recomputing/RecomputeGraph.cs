using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Recomputing;

/// <summary>
/// Everything right of sightings and decisions, computed when asked for and kept while it holds. Inputs are set; values are
/// asked for; an edit costs what hangs on it and stops where a value comes out equal. Any order of edits that ends in the
/// same inputs gives the same values.
/// <para>One writer, any number of readers: each call takes the graph's lock and runs whole, so a reader sees one revision.</para>
/// </summary>
public sealed class RecomputeGraph
{
    private readonly Lock gate = new();
    private readonly Dictionary<string, object> inputs = new(StringComparer.Ordinal);
    private readonly SortedDictionary<string, ICounted> steps = new(StringComparer.Ordinal);
    private bool working;

    /// <summary>Counts edits that changed something; starts at 0.</summary>
    public long Revision { get; private set; }

    /// <summary>Sets an input. An equal value is no edit. Returns whether anything changed.</summary>
    public bool Set<TKey, TValue>(InputTable<TKey, TValue> input, TKey key, TValue value)
        where TKey : notnull
    {
        lock (gate)
        {
            Guard.That(!working, "no step to set an input");
            var node = Inputs(input).At(key);
            var came = !node.Present;
            if (!node.Set(value, Revision + 1)) return false;
            Revision++;
            if (came) Inputs(input).KeysMoved(Revision);
            return true;
        }
    }

    /// <summary>Takes an input away. Returns whether it was there.</summary>
    public bool Remove<TKey, TValue>(InputTable<TKey, TValue> input, TKey key)
        where TKey : notnull
    {
        lock (gate)
        {
            Guard.That(!working, "no step to remove an input");
            if (!Inputs(input).At(key).Remove(Revision + 1)) return false;
            Revision++;
            Inputs(input).KeysMoved(Revision);
            return true;
        }
    }

    /// <summary>A step's value at the present revision. What the step throws comes through, and the graph stays usable.</summary>
    public TValue Get<TKey, TValue>(Step<TKey, TValue> step, TKey key)
        where TKey : notnull
    {
        lock (gate) return Work(() => Fresh(step, key).Value!);
    }

    /// <summary>
    /// Under what name the value may be kept on disk: hash of the step's name, version and key and of all it read, down to
    /// the inputs (whose tables need a hash). Computes the value when it is not there.
    /// </summary>
    public string KeyOf<TKey, TValue>(Step<TKey, TValue> step, TKey key)
        where TKey : notnull
    {
        lock (gate) return Work(() => Fresh(step, key).Hash());
    }

    /// <summary>What was done for each step since the last <see cref="ResetCounts"/>, by name.</summary>
    public IReadOnlyList<StepCounts> Counts()
    {
        lock (gate) return [.. steps.Values.Select(s => s.Counts)];
    }

    /// <summary>What was done for one step; zeros when it was never asked.</summary>
    public StepCounts Counts(string step)
    {
        lock (gate) return steps.TryGetValue(step, out var found) ? found.Counts : new(step, 0, 0, 0, 0);
    }

    /// <summary>Sets all counts to zero.</summary>
    public void ResetCounts()
    {
        lock (gate) foreach (var step in steps.Values) step.ResetCounts();
    }

    internal InputNodes<TKey, TValue> Inputs<TKey, TValue>(InputTable<TKey, TValue> table)
        where TKey : notnull
    {
        if (!inputs.TryGetValue(table.Name, out var found)) inputs.Add(table.Name, found = new InputNodes<TKey, TValue>(table));
        var nodes = found as InputNodes<TKey, TValue>;
        Guard.That(nodes is not null && ReferenceEquals(nodes.Table, table), "one input table under the name '" + table.Name + "'");
        return nodes;
    }

    internal StepNodes<TKey, TValue> Steps<TKey, TValue>(Step<TKey, TValue> step)
        where TKey : notnull
    {
        if (!steps.TryGetValue(step.Name, out var found)) steps.Add(step.Name, found = new StepNodes<TKey, TValue>(this, step));
        var nodes = found as StepNodes<TKey, TValue>;
        Guard.That(nodes is not null && ReferenceEquals(nodes.Step, step), "one step under the name '" + step.Name + "'");
        return nodes;
    }

    private StepNode<TKey, TValue> Fresh<TKey, TValue>(Step<TKey, TValue> step, TKey key)
        where TKey : notnull
    {
        var node = Steps(step).At(key);
        node.Refresh();
        return node;
    }

    private T Work<T>(Func<T> work)
    {
        // A step that asked the graph itself would read without being noted.
        Guard.That(!working, "a step to read through its reads, not through the graph");
        working = true;
        try
        {
            return work();
        }
        finally
        {
            working = false;
        }
    }
}
