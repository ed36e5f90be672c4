namespace Lidoff.Naming.Factors;

/// <summary>Every factor, found by type, in the order of the list of reasons.</summary>
public static class FactorRegistry
{
    /// <summary>All factors.</summary>
    public static IReadOnlyList<ILikelihoodFactor> All { get; } = [.. typeof(FactorRegistry).Assembly.GetTypes()
        .Where(t => t is { IsAbstract: false, IsPublic: true } && typeof(ILikelihoodFactor).IsAssignableFrom(t) && t.GetConstructor(Type.EmptyTypes) is not null)
        .Select(t => (ILikelihoodFactor)Activator.CreateInstance(t)!)
        .OrderBy(f => f.Order).ThenBy(f => f.Evidence, StringComparer.Ordinal)];
}
