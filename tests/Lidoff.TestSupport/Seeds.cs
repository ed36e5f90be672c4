using System.Security.Cryptography;
using System.Text;
using Lidoff.Evidence.Entries;

namespace Lidoff.TestSupport;

/// <summary>Fixed writer seeds: the same name always makes the same chains.</summary>
public static class Seeds
{
    /// <summary>The seed of a writer of this name.</summary>
    public static WriterSeed Of(string name) => new(SHA256.HashData(Encoding.UTF8.GetBytes(name)));
}
