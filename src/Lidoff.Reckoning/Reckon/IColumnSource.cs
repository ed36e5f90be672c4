using Lidoff.Numbers.Failing;

namespace Lidoff.Reckoning.Reckon;

/// <summary>Where <c>file.csv#column</c> comes from. The command line may read files; a page that anyone can reach may not.</summary>
public interface IColumnSource
{
    /// <summary>The numbers of a column, at least one, all finite; all faults at once, placed at <paramref name="where"/>.</summary>
    Outcome<IReadOnlyList<double>> Column(string file, string column, string where);
}
