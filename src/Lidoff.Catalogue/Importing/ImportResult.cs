using Lidoff.Catalogue.Joining;
using Lidoff.Numbers.Failing;

namespace Lidoff.Catalogue.Importing;

/// <summary>
/// What an import did or would do: rows that brought a new part, rows that met a known one (or an earlier row of the file), and what was refused. All or
/// nothing a file: where anything is refused, nothing is added or merged.
/// </summary>
public sealed record ImportResult(int Added, int Merged, IReadOnlyList<Fault> Refused)
{
    /// <summary>Counts a readable import against the parts that are known already.</summary>
    public static ImportResult Of(PartCatalogue known, Outcome<ImportedRows> import)
    {
        if (!import.TryValue(out var rows)) return new ImportResult(0, 0, import.Faults);
        var names = new HashSet<string>(StringComparer.Ordinal);
        var merged = rows.Rows.Count(r => known.Find(r.Part) is not null || !names.Add(PartFold.Of(r.Part)));
        return new ImportResult(rows.Rows.Count - merged, merged, []);
    }
}
