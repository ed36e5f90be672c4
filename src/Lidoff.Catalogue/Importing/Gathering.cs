using Lidoff.Catalogue.Tables;
using Lidoff.Numbers.Failing;

namespace Lidoff.Catalogue.Importing;

/// <summary>Collects the rows, faults and notes of one file while it is read.</summary>
internal sealed class Gathering(string fileName)
{
    private readonly List<CatalogueRow> rows = [];
    private readonly List<Fault> faults = [];
    private readonly List<string> notes = [];
    private readonly Dictionary<string, int> seen = new(StringComparer.Ordinal);
    private int left;

    public string FileName { get; } = fileName;

    public bool Full => rows.Count >= ImportLimits.Rows;

    public void Add(Fault fault)
    {
        if (faults.Count < ImportLimits.Faults) faults.Add(fault);
        else left++;
    }

    public void Add(Outcome<CatalogueRow> row)
    {
        if (row.TryValue(out var value)) rows.Add(value);
        foreach (var fault in row.Faults) Add(fault);
    }

    public void AddTooMany() => Add(CatalogueSentences.TooManyRows(FileName, ImportLimits.Rows));

    public void Note(string sentence) => notes.Add(sentence);

    /// <summary>True, with a fault, when the same words stood on an earlier line.</summary>
    public bool Doubled(int line, string words)
    {
        if (seen.TryAdd(words, line)) return false;
        Add(CatalogueSentences.DoubledRow(line, seen[words]));
        return true;
    }

    public Outcome<ImportedRows> Result(string hash)
    {
        if (rows.Count == 0 && faults.Count == 0) return CatalogueSentences.NothingInIt(FileName);
        if (faults.Count == 0) return new ImportedRows(FileName, hash, rows, notes);
        return Outcome<ImportedRows>.Failed(left == 0 ? faults : [.. faults, CatalogueSentences.MoreFaults(FileName, left)]);
    }
}
