using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Entries;

/// <summary>
/// What makes a writing process itself: random bytes drawn once at the program's edge (or fixed in a test) and never
/// stored. From it come the name of its chain in each dossier and the salt of each payload. Two processes must never
/// share one.
/// </summary>
public sealed class WriterSeed
{
    /// <summary>Fewest bytes a seed may have: 128 bits make a meeting of two seeds a thing that does not happen.</summary>
    public const int LeastBytes = 16;

    private readonly byte[] seed;

    /// <summary>Takes the seed's bytes.</summary>
    public WriterSeed(ReadOnlySpan<byte> bytes)
    {
        Guard.That(bytes.Length >= LeastBytes, "a writer seed of at least 16 bytes");
        seed = bytes.ToArray();
        Name = Convert.ToHexStringLower(Derive("name"))[..16];
    }

    /// <summary>A name for this process that gives nothing of the seed away: 16 hex digits.</summary>
    public string Name { get; }

    /// <summary>
    /// Name of this process's chain in <paramref name="dossier"/>, 32 hex digits. A chain stays within one dossier, so that
    /// a dossier can be packed without a gap and without a word about its neighbours.
    /// </summary>
    public string Chain(string dossier) => Convert.ToHexStringLower(Derive("chain:" + dossier))[..32];

    /// <summary>
    /// The salt of the payload at <paramref name="seq"/>, 32 hex digits. It is stored inside the payload: two equal
    /// payloads then have different hashes, and the hash that stays after erasing tells nothing to one who guesses.
    /// </summary>
    public string Salt(string chain, long seq) => Convert.ToHexStringLower(Derive("salt:" + chain, seq))[..32];

    private byte[] Derive(string purpose, long number = 0)
    {
        var text = Encoding.UTF8.GetBytes(purpose);
        var message = new byte[text.Length + sizeof(long)];
        text.CopyTo(message, 0);
        BinaryPrimitives.WriteInt64BigEndian(message.AsSpan(text.Length), number);
        return HMACSHA256.HashData(seed, message);
    }
}
