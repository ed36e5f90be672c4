using Lidoff.Catalogue.Parts;

namespace Lidoff.Catalogue;

/// <summary>What the catalogue holds, counted over parts: by coarse class, by class word, by maker, by confidence, and how many parts have each fact. Counts come largest first, then by word.</summary>
public sealed record CatalogueStats(
    int Parts, int OrderCodes, int Rows, IReadOnlyList<KeyValuePair<string, int>> ByKind, IReadOnlyList<KeyValuePair<string, int>> ByClass,
    IReadOnlyList<KeyValuePair<string, int>> ByMaker, IReadOnlyList<KeyValuePair<string, int>> ByConfidence, IReadOnlyList<KeyValuePair<string, int>> Filled)
{
    /// <summary>Counts a set of parts.</summary>
    public static CatalogueStats Of(IReadOnlyList<Part> parts) => new(
        parts.Count,
        parts.Sum(p => p.OrderCodes.Count),
        parts.Sum(p => p.Rows.Count),
        Count(parts, p => p.Kind),
        Count(parts, p => p.Class),
        Count(parts, p => p.Maker),
        Count(parts, p => p.Confidence.ToString().ToLowerInvariant()),
        // In the order of the columns of the import contract; a price or a year counts like any other fact.
        [
            new("maker", parts.Count(p => p.Maker.Length > 0)),
            new("class", parts.Count(p => p.Class.Length > 0)),
            new("package", parts.Count(p => p.Packages.Any(f => f.Name.Length > 0))),
            new("body_l_mm", parts.Count(p => p.Packages.Any(f => f.LengthMm is not null))),
            new("body_w_mm", parts.Count(p => p.Packages.Any(f => f.WidthMm is not null))),
            new("height_mm", parts.Count(p => p.Packages.Any(f => f.HeightMm is not null))),
            new("pitch_mm", parts.Count(p => p.Packages.Any(f => f.PitchMm is not null))),
            new("pins", parts.Count(p => p.Packages.Any(f => f.Pins is not null))),
            new("pinout", parts.Count(p => p.PinLists.Count > 0)),
            new("interface", parts.Count(p => p.Interface.Length > 0)),
            new("i2c_addresses", parts.Count(p => p.BusAddresses.Count > 0)),
            new("id_register", parts.Count(p => p.Identity.Count > 0)),
            new("id_value", parts.Count(p => p.Identity.Count > 0)),
            new("marks", parts.Count(p => p.Marks.Count > 0)),
            new("supply_min_v", parts.Count(p => p.SupplyLeast is not null)),
            new("supply_max_v", parts.Count(p => p.SupplyMost is not null)),
            new("introduced", parts.Count(p => p.Introduced is not null)),
            new("idle_current_a", parts.Count(p => p.IdleCurrent is not null)),
            new("active_current_a", parts.Count(p => p.ActiveCurrent is not null)),
            new("price", parts.Count(p => p.Price.Length > 0)),
            new("source", parts.Count(p => p.Sources.Count > 0)),
        ]);

    private static IReadOnlyList<KeyValuePair<string, int>> Count(IReadOnlyList<Part> parts, Func<Part, string> pick) =>
    [
        .. parts.GroupBy(pick, StringComparer.Ordinal).Select(g => new KeyValuePair<string, int>(g.Key, g.Count()))
            .OrderByDescending(c => c.Value).ThenBy(c => c.Key, StringComparer.Ordinal),
    ];
}
