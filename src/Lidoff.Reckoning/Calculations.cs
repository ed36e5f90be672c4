using Lidoff.Numbers.Failing;

namespace Lidoff.Reckoning;

/// <summary>
/// Every calculation there is, found by type: a public sealed class with a public parameterless constructor that derives
/// from <see cref="Calculation{TSelf}"/>. Adding one touches no existing file.
/// </summary>
public sealed class Calculations
{
    private const int MostNeighbours = 3;

    private readonly SortedDictionary<string, Calculation> byName = new(StringComparer.Ordinal);

    /// <summary>The calculations given; two of one name are a programmer's mistake.</summary>
    public Calculations(IEnumerable<Calculation> items)
    {
        foreach (var item in Guard.NotNull(items)) Guard.That(byName.TryAdd(item.Info.Name, item), "one calculation of the name " + item.Info.Name);
    }

    /// <summary>All calculations of this room.</summary>
    public static Calculations All { get; } = new(typeof(Calculations).Assembly.GetTypes()
        .Where(type => type.IsSubclassOf(typeof(Calculation)) && !type.IsAbstract)
        .Select(type => (Calculation)Activator.CreateInstance(type)!));

    /// <summary>In the order of their names.</summary>
    public IReadOnlyCollection<Calculation> Items => byName.Values;

    /// <summary>The calculation of that exact name; null when there is none.</summary>
    public Calculation? Find(string name) => byName.GetValueOrDefault(name);

    /// <summary>Names that may have been meant: those that hold the text, then those that differ least from it.</summary>
    public IReadOnlyList<string> Nearest(string name) => NameDistance.Nearest(name, byName.Keys, MostNeighbours);
}
