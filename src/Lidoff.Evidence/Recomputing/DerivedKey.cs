using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;

namespace Lidoff.Evidence.Recomputing;

/// <summary>Under what name a derived value may be kept on disk: a hash of everything that makes it what it is.</summary>
public static class DerivedKey
{
    /// <summary>
    /// 64 lower-case hex digits from the step's name and version, the key's text, and the hashes of what it reads in the
    /// order of reading. Each part goes in with its length, so that no two lists of parts look alike.
    /// </summary>
    public static string Of(string step, string version, string key, IReadOnlyList<string> reads)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        Add(hash, step);
        Add(hash, version);
        Add(hash, key);
        foreach (var read in reads) Add(hash, read);
        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    private static void Add(IncrementalHash hash, string part)
    {
        var bytes = Encoding.UTF8.GetBytes(part);
        Span<byte> length = stackalloc byte[4];
        BinaryPrimitives.WriteInt32LittleEndian(length, bytes.Length);
        hash.AppendData(length);
        hash.AppendData(bytes);
    }
}
