namespace Lidoff.Evidence.Recomputing;

/// <summary>A place of the graph: an input, the keys of a table, or a step's value.</summary>
internal abstract class Node
{
    /// <summary>Revision in which its value last came out different.</summary>
    public long ChangedAt { get; protected set; }

    /// <summary>Who read it, so that an edit marks only what hangs on it.</summary>
    public HashSet<Node> Readers { get; } = [];

    /// <summary>Brings its value up to the present revision.</summary>
    public abstract void Refresh();

    /// <summary>Notes that something below has moved; true when that was news.</summary>
    public abstract bool Doubt();

    /// <summary>Hash of its value, or of all that makes it.</summary>
    public abstract string Hash();

    /// <summary>Marks all that hangs on it, and nothing else.</summary>
    protected void DoubtReaders()
    {
        var open = new Stack<Node>(Readers);
        while (open.TryPop(out var next))
        {
            if (!next.Doubt()) continue;
            foreach (var reader in next.Readers) open.Push(reader);
        }
    }
}
