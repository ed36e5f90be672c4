using System.Security.Cryptography;
using System.Text;

namespace Lidoff.Catalogue.Indexing;

/// <summary>Names what a cached file was built from: the shipped manifest, every import in order, the version of the file layout and of the joining rules.</summary>
public static class CacheKey
{
    // Raise it when the layout of the cached files or a joining rule changes.
    private const int Version = 1;

    /// <summary>Sixteen hex digits; two catalogues with one key are equal.</summary>
    public static string Of(string manifestHash, IEnumerable<string> importHashes)
    {
        var text = FormattableString.Invariant($"lidoff catalogue {Version}\n{manifestHash}\n") + string.Join('\n', importHashes);
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)).AsSpan(0, 8));
    }
}
