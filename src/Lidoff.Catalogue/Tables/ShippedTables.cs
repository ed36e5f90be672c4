using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Lidoff.Numbers.Failing;

namespace Lidoff.Catalogue.Tables;

/// <summary>Reads the tables in the program's own data folder, each checked against the hash in the manifest.</summary>
public sealed class ShippedTables
{
    private static readonly JsonSerializerOptions ManifestShape = new() { PropertyNamingPolicy = JsonNamingPolicy.CamelCase };

    private readonly string folder;

    private ShippedTables(string folder, Manifest manifest, string hash)
    {
        this.folder = folder;
        Manifest = manifest;
        Hash = hash;
    }

    /// <summary>The folder that the build lays beside the program.</summary>
    public static string OwnFolder => Path.Combine(AppContext.BaseDirectory, "data", "catalogue");

    /// <summary>What the manifest says.</summary>
    public Manifest Manifest { get; }

    /// <summary>SHA-256 of the manifest, hex: it names all tables by their hashes, so it names the whole of the shipped data.</summary>
    public string Hash { get; }

    /// <summary>Opens the folder; faults when there is no manifest of a known format.</summary>
    public static Outcome<ShippedTables> Open(string folder)
    {
        var path = Path.Combine(folder, "manifest.json");
        if (!File.Exists(path)) return CatalogueSentences.NoManifest(path);
        var bytes = File.ReadAllBytes(path);
        try
        {
            var manifest = JsonSerializer.Deserialize<Manifest>(bytes, ManifestShape);
            return manifest is { Format: 1, Files.Count: > 0 }
                ? new ShippedTables(folder, manifest, Convert.ToHexStringLower(SHA256.HashData(bytes)))
                : CatalogueSentences.BadManifest(path);
        }
        catch (JsonException)
        {
            return CatalogueSentences.BadManifest(path);
        }
    }

    /// <summary>All rows of the part tables, in manifest order.</summary>
    public Outcome<IReadOnlyList<CatalogueRow>> PartRows()
    {
        var rows = new List<CatalogueRow>();
        var faults = new List<Fault>();
        foreach (var file in Manifest.Files.Where(f => f.Kind == "parts"))
        {
            var reader = new RowReader(file.File, decimalComma: false);
            foreach (var (line, cell) in Records(file, faults))
            {
                var row = reader.Read(line, cell);
                if (row.TryValue(out var value)) rows.Add(value);
                else faults.AddRange(row.Faults);
            }
        }

        return faults.Count > 0 ? Outcome<IReadOnlyList<CatalogueRow>>.Failed(faults) : rows;
    }

    /// <summary>Records of one table: the line and a way to ask for a cell by column name. A table with a wrong hash gives a fault and no records.</summary>
    internal IEnumerable<(int Line, Func<string, string> Cell)> Records(ManifestFile file, List<Fault> faults)
    {
        var path = Path.Combine(folder, file.File);
        var packed = File.Exists(path) ? File.ReadAllBytes(path) : [];
        if (Convert.ToHexStringLower(SHA256.HashData(packed)) != file.Sha256)
        {
            faults.Add(CatalogueSentences.ChangedTable(path));
            yield break;
        }

        using var unpacked = new GZipStream(new MemoryStream(packed), CompressionMode.Decompress);
        using var text = new StreamReader(unpacked, Encoding.UTF8);
        var records = new CsvRecords(text.ReadToEnd(), ',');
        var header = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var name in records.Next() ?? []) header.Add(name, header.Count);
        while (records.Next() is { } cells)
            yield return (records.Line, column => header.TryGetValue(column, out var at) && at < cells.Count ? cells[at] : "");
    }
}
