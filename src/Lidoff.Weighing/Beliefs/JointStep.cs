using Lidoff.Numbers.Failing;

namespace Lidoff.Weighing.Beliefs;

/// <summary>
/// The one joint step of design §6: variables with their local evidence and the factors they share, component by component. Small
/// components are counted out; larger ones pass messages in fixed, ordered rounds. Everything is ordered by id first, so neither the
/// order of variables nor that of factors changes a bit. The graph sees this as one node.
/// </summary>
public static class JointStep
{
    /// <summary>Components with at most this many joint states are counted out exactly.</summary>
    public const int CountedStates = 50_000;

    /// <summary>Beliefs of all variables, in ordinal order of their ids. Variables that no factor names keep their local belief.</summary>
    public static IReadOnlyList<JointBelief> Run(IEnumerable<Variable> variables, IEnumerable<ISharedFactor> factors, int countedStates = CountedStates)
    {
        var ordered = Guard.NotNull(variables).OrderBy(v => v.Id, StringComparer.Ordinal).ToArray();
        var shared = Guard.NotNull(factors).OrderBy(f => f.Id, StringComparer.Ordinal).ToArray();
        Check(ordered, shared);
        var beliefs = new SortedDictionary<string, JointBelief>(StringComparer.Ordinal);
        foreach (var component in JointComponent.Split(ordered, shared))
        {
            var found = component.JointStates <= countedStates ? Enumeration.Run(component) : MessagePassing.Run(component);
            foreach (var belief in found) beliefs[belief.Variable] = belief;
        }
        return [.. beliefs.Values];
    }

    private static void Check(Variable[] variables, ISharedFactor[] factors)
    {
        var ids = variables.Select(v => v.Id).ToHashSet(StringComparer.Ordinal);
        Guard.That(ids.Count == variables.Length, "every variable once");
        Guard.That(factors.Select(f => f.Id).Distinct(StringComparer.Ordinal).Count() == factors.Length, "every factor once");
        foreach (var v in variables) Guard.That(v.States.Count > 0 && v.States.Count == v.LogWeights.Count && v.LogWeights.Any(double.IsFinite), "a variable with states, as many weights, one of them possible: " + v.Id);
        foreach (var f in factors) Guard.That(f.Variables.All(ids.Contains) && f.Variables.Distinct(StringComparer.Ordinal).Count() == f.Variables.Count, "a factor over known variables, each once: " + f.Id);
    }
}
