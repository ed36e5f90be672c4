using System.Runtime.CompilerServices;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Recomputing;

/// <summary>
/// One value of a step. It holds (<c>state = Holds</c>) until something below moves; then it is doubted, and the next
/// reader makes it look, in the order of its last reading, whether anything it had read really came out different.
/// Order matters: a later read may make no sense once an earlier one has changed.
/// </summary>
internal sealed class StepNode<TKey, TValue>(StepNodes<TKey, TValue> home, TKey key) : Node
    where TKey : notnull
{
    private enum State
    {
        Missing,
        Doubted,
        Holds,
        Running,
    }

    private State state = State.Missing;
    private Node[] reads = [];
    private long verifiedAt;
    private (long At, string Hex) hash = (-1, "");

    public TValue? Value { get; private set; }

    public override bool Doubt()
    {
        if (state != State.Holds) return false;
        state = State.Doubted;
        return true;
    }

    public override void Refresh()
    {
        RuntimeHelpers.EnsureSufficientExecutionStack();
        Guard.That(state != State.Running, "step '" + home.Step.Name + "' not to read itself, directly or through others (key " + home.Step.KeyText(key) + ")");
        if (state == State.Holds)
        {
            home.Reused++;
            return;
        }
        if (state == State.Doubted && !ReadsMoved())
        {
            home.Checked++;
            Settle();
            return;
        }
        Run();
    }

    public override string Hash()
    {
        // Kept for the revision: a value many others read is hashed once, not once a path.
        if (hash.At != home.Graph.Revision)
            hash = (home.Graph.Revision, DerivedKey.Of(home.Step.Name, home.Version, home.Step.KeyText(key), [.. reads.Select(r => r.Hash())]));
        return hash.Hex;
    }

    private bool ReadsMoved()
    {
        // While it looks it counts as running, so that a circle is found here too and not by the stack.
        state = State.Running;
        try
        {
            foreach (var read in reads)
            {
                read.Refresh();
                if (read.ChangedAt > verifiedAt) return true;
            }
            return false;
        }
        finally
        {
            state = State.Doubted;
        }
    }

    private void Run()
    {
        var before = state;
        var reading = new Reading(home.Graph);
        state = State.Running;
        TValue value;
        try
        {
            value = home.Step.Compute(key, reading);
        }
        catch
        {
            // What it had read before stays its reads: a value that failed once is doubted until it comes out.
            state = before;
            throw;
        }
        finally
        {
            reading.Close();
        }
        home.Computed++;
        if (before == State.Missing || !home.Step.Same(Value!, value)) (Value, ChangedAt) = (value, home.Graph.Revision);
        else home.CutOff++;
        HangOn([.. reading.Read]);
        Settle();
    }

    private void HangOn(Node[] now)
    {
        var kept = now.ToHashSet();
        foreach (var old in reads) if (!kept.Contains(old)) old.Readers.Remove(this);
        foreach (var read in now) read.Readers.Add(this);
        reads = now;
    }

    private void Settle() => (state, verifiedAt) = (State.Holds, home.Graph.Revision);
}
