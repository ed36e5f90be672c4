using Lidoff.Evidence.Registering;
using Lidoff.Numbers.Failing;

namespace Lidoff.Reckoning;

/// <summary>
/// Every calculation of this room, found by type: adding one adds a file and touches none. The class for <c>bend_strain</c>
/// is <c>BendStrainCalculation</c>: one is found by that name alone, so that a start pays for one and not for all.
/// </summary>
public static class Calculations
{
    private const int MostNeighbours = 3;

    private static readonly Lazy<Registry<Calculation>> Found = new(() => Registry.Of<Calculation>(item => item.Info.Name, typeof(Calculations).Assembly));

    /// <summary>All of them, in the order of their names.</summary>
    public static IReadOnlyList<Calculation> All => Found.Value.Items;

    /// <summary>The calculation of that exact name; null when there is none.</summary>
    public static Calculation? Find(string name)
    {
        var type = ClassOf(Guard.NotNull(name));
        var found = typeof(Calculations).Assembly.GetTypes().FirstOrDefault(each => each.Name == type && each.IsSubclassOf(typeof(Calculation)));
        var item = found is null ? null : (Calculation)Activator.CreateInstance(found)!;
        return item?.Info.Name == name ? item : null;
    }

    /// <summary>Names that may have been meant: those that hold the text, then those that differ least from it.</summary>
    public static IReadOnlyList<string> Nearest(string name) => NameDistance.Nearest(name, All.Select(item => item.Info.Name), MostNeighbours);

    private static string ClassOf(string name) =>
        string.Concat(name.Split('_').Where(word => word.Length > 0).Select(word => char.ToUpperInvariant(word[0]) + word[1..])) + "Calculation";
}
