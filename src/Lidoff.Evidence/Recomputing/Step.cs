using System.Globalization;

namespace Lidoff.Evidence.Recomputing;

/// <summary>
/// One derived value, as a pure function of a key and of what it reads. Same reads, same value: a step never looks at a
/// clock, a file or a static. One instance a graph; its name is unique there.
/// </summary>
/// <typeparam name="TKey">What one value is asked by: a spot, a claim, a dossier. Value equality.</typeparam>
/// <typeparam name="TValue">An immutable value. Value equality makes the early stop work; without it everything above reruns.</typeparam>
public abstract class Step<TKey, TValue>
    where TKey : notnull
{
    /// <summary>Unique in its graph; shown in counts.</summary>
    public abstract string Name { get; }

    /// <summary>Hash of the step's code. Default: <see cref="StepVersion.Of"/> of the assembly that holds it.</summary>
    public virtual string Version => StepVersion.Of(GetType().Assembly);

    /// <summary>Computes the value. Everything it depends on is read through <paramref name="reads"/>, before it returns.</summary>
    public abstract TValue Compute(TKey key, IReads reads);

    /// <summary>True when a newly computed value leaves everything above as it is. Default: value equality.</summary>
    public virtual bool Same(TValue before, TValue after) => EqualityComparer<TValue>.Default.Equals(before, after);

    /// <summary>The key as text for <see cref="RecomputeGraph.KeyOf"/>; distinct keys give distinct texts. Default: its invariant text.</summary>
    public virtual string KeyText(TKey key) => Convert.ToString(key, CultureInfo.InvariantCulture) ?? "";
}
