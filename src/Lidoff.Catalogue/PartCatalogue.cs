using Lidoff.Catalogue.Importing;
using Lidoff.Catalogue.Indexing;
using Lidoff.Catalogue.Joining;
using Lidoff.Catalogue.Parts;
using Lidoff.Catalogue.Searching;
using Lidoff.Catalogue.Tables;
using Lidoff.Numbers.Failing;

namespace Lidoff.Catalogue;

/// <summary>
/// What Lidoff knows of parts: the shipped tables and a user's imports, joined. Immutable and safe to share between threads.
/// Dispose it to let go of its search index.
/// </summary>
public sealed class PartCatalogue : IDisposable
{
    private readonly Lazy<Dictionary<string, int>> byFold;
    private readonly PartSearch search;
    private SearchIndex? index;

    private PartCatalogue(IReadOnlyList<Part> parts, string? indexPath)
    {
        Parts = parts;
        Lookups = new PartLookups(parts);
        byFold = new(NumberNames);
        search = new PartSearch(parts, () => index = indexPath is null ? null : SearchIndex.Open(indexPath, parts));
    }

    /// <summary>All parts, in ordinal order of their names.</summary>
    public IReadOnlyList<Part> Parts { get; }

    /// <summary>Ways in for ranking.</summary>
    public PartLookups Lookups { get; }

    /// <summary>Counts over all parts.</summary>
    public CatalogueStats Stats => CatalogueStats.Of(Parts);

    /// <summary>Reads the shipped tables of the program's own data folder, without a cache and without imports.</summary>
    public static Outcome<PartCatalogue> Load() => Load(ShippedTables.OwnFolder);

    /// <summary>Reads the shipped tables of a folder, without a cache and without imports.</summary>
    public static Outcome<PartCatalogue> Load(string dataFolder) =>
        ShippedTables.Open(dataFolder).Then(t => t.PartRows()).Then(rows => new PartCatalogue(PartJoiner.Join(rows), null));

    /// <summary>
    /// The shipped tables of <paramref name="dataFolder"/> and the imports, in the order given. Built once and kept in
    /// <paramref name="cacheFolder"/> under a key of all that went in; the files there are only ever renamed into place whole,
    /// and can be deleted at any time. A folder that cannot be written costs time and nothing else.
    /// </summary>
    public static Outcome<PartCatalogue> Open(string dataFolder, string cacheFolder, IReadOnlyList<ImportSource> imports)
    {
        var opened = ShippedTables.Open(dataFolder);
        if (!opened.TryValue(out var tables)) return Outcome<PartCatalogue>.Failed(opened.Faults);
        var key = CacheKey.Of(tables.Hash, imports.Select(i => i.Hash + i.FileName + i.Options?.DecimalComma));
        var partsPath = Path.Combine(cacheFolder, $"parts-{key}.bin");
        var indexPath = Path.Combine(cacheFolder, $"search-{key}.db");
        if (PartsFile.Read(partsPath) is { } kept) return new PartCatalogue(kept, indexPath);
        var rows = Rows(tables, imports);
        if (!rows.TryValue(out var all)) return Outcome<PartCatalogue>.Failed(rows.Faults);
        var parts = PartJoiner.Join(all);
        if (CacheFile.Put(partsPath, path => PartsFile.Write(path, parts)))
        {
            CacheFile.Forget(partsPath, "parts-*.bin");
            CacheFile.Forget(indexPath, "search-*.db");
        }

        return new PartCatalogue(parts, indexPath);
    }

    /// <summary>The part of this name or order code, blanks, hyphens and case left aside; null when there is none.</summary>
    public Part? Find(string name) => byFold.Value.TryGetValue(PartFold.Of(name), out var at) ? Parts[at] : null;

    /// <summary>
    /// Parts that a typed text points at: exact, prefix, infix, <c>?</c> and <c>*</c>, words of maker and class, look-alike
    /// signs, and one misread sign when nothing stricter is found. At most <paramref name="limit"/> rows, best first; the same
    /// text gives the same rows on every machine.
    /// </summary>
    public SearchResult Search(string text, int limit)
    {
        Guard.That(limit >= 0, "a limit of zero or more");
        return search.Search(text, limit);
    }

    /// <inheritdoc/>
    public void Dispose() => index?.Dispose();

    private static Outcome<IReadOnlyList<CatalogueRow>> Rows(ShippedTables tables, IReadOnlyList<ImportSource> imports)
    {
        var shipped = tables.PartRows();
        var read = imports.Select(i => i.Read()).ToList();
        List<Fault> faults = [.. shipped.Faults, .. read.SelectMany(r => r.Faults)];
        if (faults.Count > 0) return Outcome<IReadOnlyList<CatalogueRow>>.Failed(faults);
        return new List<CatalogueRow>([.. shipped.Value, .. read.SelectMany(r => r.Value.Rows)]);
    }

    private Dictionary<string, int> NumberNames()
    {
        var numbers = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var i = 0; i < Parts.Count; i++) numbers[PartFold.Of(Parts[i].Name)] = i;
        for (var i = 0; i < Parts.Count; i++)
        {
            foreach (var code in Parts[i].OrderCodes) numbers.TryAdd(PartFold.Of(code), i);
        }

        return numbers;
    }
}
