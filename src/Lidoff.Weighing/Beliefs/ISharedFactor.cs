namespace Lidoff.Weighing.Beliefs;

/// <summary>
/// One sighting that speaks about several variables at once: a touch between two spots is likely when both parts' pin-outs put the
/// touched pins on one net. It is told once, whoever profits from it.
/// </summary>
public interface ISharedFactor
{
    /// <summary>Names the factor for good; ordered ordinally.</summary>
    string Id { get; }

    /// <summary>Ids of the variables it speaks about, each once, two or more in the usual case.</summary>
    IReadOnlyList<string> Variables { get; }

    /// <summary>
    /// Natural log of the likelihood when the variables have these states (places in <see cref="Variable.States"/>, in the order of
    /// <see cref="Variables"/>); finite, blunders included.
    /// </summary>
    double LogLikelihood(IReadOnlyList<int> states);
}
