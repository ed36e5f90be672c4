using Lidoff.Numbers.Failing;

namespace Lidoff.Catalogue.Importing;

/// <summary>
/// An import as the workspace keeps it: the file's name, the SHA-256 of its bytes (hex), a way to open it, the options it was
/// read with. It is only opened when no cached catalogue was built from it. Give imports in fold order: the shipped tables
/// come first in the join, then the imports as given.
/// </summary>
public sealed record ImportSource(string FileName, string Hash, Func<Stream> Open, ImportOptions? Options = null)
{
    internal Outcome<ImportedRows> Read()
    {
        using var stream = Open();
        return ImportReader.Read(stream, FileName, Options);
    }
}
