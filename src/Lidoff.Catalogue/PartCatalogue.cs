using Lidoff.Catalogue.Joining;
using Lidoff.Catalogue.Parts;
using Lidoff.Catalogue.Tables;
using Lidoff.Numbers.Failing;

namespace Lidoff.Catalogue;

/// <summary>What Lidoff knows of parts: the shipped tables and a user's imports, joined. Immutable and safe to share between threads.</summary>
public sealed class PartCatalogue
{
    private readonly Dictionary<string, int> byFold = new(StringComparer.Ordinal);

    private PartCatalogue(IReadOnlyList<Part> parts)
    {
        Parts = parts;
        for (var i = 0; i < parts.Count; i++)
        {
            foreach (var code in parts[i].OrderCodes) byFold.TryAdd(PartFold.Of(code), i);
            byFold[PartFold.Of(parts[i].Name)] = i;
        }
    }

    /// <summary>All parts, in ordinal order of their names.</summary>
    public IReadOnlyList<Part> Parts { get; }

    /// <summary>Reads the shipped tables of the program's own data folder, without a cache and without imports.</summary>
    public static Outcome<PartCatalogue> Load() => Load(ShippedTables.OwnFolder);

    /// <summary>Reads the shipped tables of a folder, without a cache and without imports.</summary>
    public static Outcome<PartCatalogue> Load(string dataFolder) =>
        ShippedTables.Open(dataFolder).Then(t => t.PartRows()).Then(rows => new PartCatalogue(PartJoiner.Join(rows)));

    /// <summary>The part of this name or order code, blanks, hyphens and case left aside; null when there is none.</summary>
    public Part? Find(string name) => byFold.TryGetValue(PartFold.Of(name), out var at) ? Parts[at] : null;
}
