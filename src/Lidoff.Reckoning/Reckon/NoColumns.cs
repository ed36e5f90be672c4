using Lidoff.Numbers.Failing;

namespace Lidoff.Reckoning.Reckon;

/// <summary>Reads no files.</summary>
public sealed class NoColumns : IColumnSource
{
    /// <inheritdoc/>
    public Outcome<IReadOnlyList<double>> Column(string file, string column, string where) => ReckoningSentences.NoFilesHere(where);
}
