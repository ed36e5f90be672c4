namespace Lidoff.Evidence.Registering.Recognising;

/// <summary>
/// A table in text: some separator stands equally often, at least once, on each of its first lines (quoted fields left out
/// of the count). Comment lines at the top, as loggers write them, may differ.
/// </summary>
public sealed class CsvRecogniser : IFileRecogniser
{
    private const int MostLines = 20;

    /// <inheritdoc/>
    public string Name => "csv";

    /// <inheritdoc/>
    public string MediaType => "text/csv";

    /// <inheritdoc/>
    public string Says => "a table in text";

    /// <inheritdoc/>
    public bool IsPicture => false;

    /// <inheritdoc/>
    public Recognition Look(FileHead head)
    {
        var lines = TextLook.Lines(head).Where(l => !l.StartsWith('#') && !l.StartsWith("//", StringComparison.Ordinal)).Take(MostLines).ToList();
        var named = head.NameEndsWith(".csv") || head.NameEndsWith(".tsv");
        // One line alone is a table only if its name says so too: prose has commas.
        if (lines.Count < (named ? 1 : 2)) return Recognition.No;
        if (lines.TrueForAll(l => l.TrimStart().StartsWith('{'))) return Recognition.No;
        foreach (var separator in ",;\t|")
        {
            var counts = lines.Select(l => Count(l, separator)).Distinct().ToList();
            if (counts is [> 0]) return Recognition.Shaped;
        }
        return Recognition.No;
    }

    private static int Count(string line, char separator)
    {
        var (count, quoted) = (0, false);
        foreach (var c in line)
        {
            if (c == '"') quoted = !quoted;
            else if (c == separator && !quoted) count++;
        }
        return count;
    }
}
