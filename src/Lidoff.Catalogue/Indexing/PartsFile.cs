using System.Security.Cryptography;
using System.Text;
using Lidoff.Catalogue.Parts;

namespace Lidoff.Catalogue.Indexing;

/// <summary>
/// All joined parts in one compact file, so that a command starts in tens of milliseconds: every text and every pin-out once,
/// parts refer to them by number. A SHA-256 over the rest ends the file; a file that does not check out counts as absent.
/// </summary>
internal static class PartsFile
{
    private const int Magic = 0x3150444C; // "LDP1"

    public static void Write(string path, IReadOnlyList<Part> parts)
    {
        var body = new MemoryStream();
        using (var writer = new BinaryWriter(body, Encoding.UTF8, leaveOpen: true)) new PartsWriter(writer).Write(parts);
        var bytes = body.ToArray();
        using var file = File.Create(path);
        file.Write(BitConverter.GetBytes(Magic));
        file.Write(bytes);
        file.Write(SHA256.HashData(bytes));
    }

    /// <summary>The parts, or null when the file is absent, cut short or changed.</summary>
    public static IReadOnlyList<Part>? Read(string path)
    {
        try
        {
            if (!File.Exists(path)) return null;
            var bytes = File.ReadAllBytes(path);
            const int Frame = sizeof(int) + SHA256.HashSizeInBytes;
            if (bytes.Length < Frame || BitConverter.ToInt32(bytes) != Magic) return null;
            var body = bytes.AsSpan(sizeof(int), bytes.Length - Frame);
            if (!SHA256.HashData(body).AsSpan().SequenceEqual(bytes.AsSpan(bytes.Length - SHA256.HashSizeInBytes))) return null;
            using var reader = new BinaryReader(new MemoryStream(bytes, sizeof(int), body.Length, writable: false), Encoding.UTF8);
            return new PartsReader(reader).Read();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }
}
