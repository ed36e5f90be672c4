using System.Collections.Frozen;

namespace Lidoff.Catalogue.Tables;

/// <summary>The columns that a parts table may have, in the order of the contract, and the few more that shipped tables use.</summary>
public static class Columns
{
    /// <summary>Columns of the import contract, in its order.</summary>
    public static IReadOnlyList<string> Contract { get; } =
    [
        "part", "maker", "class", "package", "body_l_mm", "body_w_mm", "height_mm", "pitch_mm", "pins", "pinout", "interface",
        "i2c_addresses", "id_register", "id_value", "marks", "supply_min_v", "supply_max_v", "introduced", "idle_current_a",
        "active_current_a", "price", "source", "confidence",
    ];

    /// <summary>Columns that only shipped tables use; an import may carry them too.</summary>
    public static IReadOnlyList<string> Further { get; } = ["example_addresses", "second_sources", "note"];

    private static readonly FrozenSet<string> Known = Contract.Concat(Further).ToFrozenSet(StringComparer.Ordinal);

    /// <summary>True when a column of this name has a meaning here.</summary>
    public static bool Has(string name) => Known.Contains(name);
}
