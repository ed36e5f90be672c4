using Lidoff.Evidence.Registering;

namespace Lidoff.Reckoning;

/// <summary>Every calculation of this room, found by type: adding one adds a file and touches none.</summary>
public static class Calculations
{
    private const int MostNeighbours = 3;

    private static readonly Registry<Calculation> Found = Registry.Of<Calculation>(item => item.Info.Name, typeof(Calculations).Assembly);

    /// <summary>All of them, in the order of their names.</summary>
    public static IReadOnlyList<Calculation> All => Found.Items;

    /// <summary>The calculation of that exact name; null when there is none.</summary>
    public static Calculation? Find(string name) => Found.TryFind(name, out var item) ? item : null;

    /// <summary>Names that may have been meant: those that hold the text, then those that differ least from it.</summary>
    public static IReadOnlyList<string> Nearest(string name) => NameDistance.Nearest(name, All.Select(item => item.Info.Name), MostNeighbours);
}
