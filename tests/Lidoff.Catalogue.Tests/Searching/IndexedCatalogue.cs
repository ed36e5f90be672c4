using Lidoff.Catalogue.Tables;
using Lidoff.TestSupport;

namespace Lidoff.Catalogue.Tests.Searching;

/// <summary>The shipped catalogue with its index in a folder of its own, built once for a test class.</summary>
public sealed class IndexedCatalogue : IDisposable
{
    private readonly TempFolder folder = new();

    public IndexedCatalogue() => Parts = PartCatalogue.Open(ShippedTables.OwnFolder, folder.Path, []).Value;

    public PartCatalogue Parts { get; }

    public void Dispose()
    {
        Parts.Dispose();
        folder.Dispose();
    }
}
