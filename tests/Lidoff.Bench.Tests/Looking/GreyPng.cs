using System.Buffers.Binary;
using System.IO.Compression;

namespace Lidoff.Bench.Tests.Looking;

/// <summary>A plain picture, put together as the PNG specification (W3C, second edition, clauses 5 and 11) has it.</summary>
public static class GreyPng
{
    /// <summary>The bytes of a grey picture, 8 bits deep.</summary>
    public static byte[] Of(int width, int height)
    {
        using var all = new MemoryStream();
        all.Write([0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A]);
        var head = new byte[13];
        BinaryPrimitives.WriteInt32BigEndian(head, width);
        BinaryPrimitives.WriteInt32BigEndian(head.AsSpan(4), height);
        head[8] = 8;
        Chunk(all, "IHDR"u8, head);
        using var packed = new MemoryStream();
        using (var zip = new ZLibStream(packed, CompressionLevel.Fastest, leaveOpen: true)) zip.Write(new byte[(width + 1) * height]);
        Chunk(all, "IDAT"u8, packed.ToArray());
        Chunk(all, "IEND"u8, []);
        return all.ToArray();
    }

    private static void Chunk(Stream to, ReadOnlySpan<byte> name, byte[] data)
    {
        Span<byte> four = stackalloc byte[4];
        BinaryPrimitives.WriteInt32BigEndian(four, data.Length);
        to.Write(four);
        to.Write(name);
        to.Write(data);
        var crc = Crc([.. name, .. data]);
        BinaryPrimitives.WriteUInt32BigEndian(four, crc);
        to.Write(four);
    }

    private static uint Crc(byte[] bytes)
    {
        var crc = uint.MaxValue;
        foreach (var b in bytes)
        {
            crc ^= b;
            for (var i = 0; i < 8; i++) crc = (crc & 1) == 1 ? 0xEDB88320 ^ (crc >> 1) : crc >> 1;
        }

        return ~crc;
    }
}
