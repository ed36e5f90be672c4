using Lidoff.Catalogue.Tables;

namespace Lidoff.Catalogue.Tests;

/// <summary>The shipped catalogue, read once for all tests of this project.</summary>
internal static class Shipped
{
    public static ShippedTables Tables { get; } = ShippedTables.Open(ShippedTables.OwnFolder).Value;

    public static PartCatalogue Parts { get; } = PartCatalogue.Load().Value;
}
