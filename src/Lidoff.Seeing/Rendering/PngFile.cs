using System.Buffers.Binary;
using System.IO.Compression;
using System.Text;

namespace Lidoff.Seeing.Rendering;

/// <summary>
/// Writes 8-bit red-green-blue PNG (W3C PNG, third edition) with an orientation (eXIf) and a comment (tEXt). Own code, so that the
/// renderer needs no picture library; the pixels are the same everywhere, the packed bytes follow the runtime's zlib.
/// </summary>
internal static class PngFile
{
    private static readonly uint[] Table = [.. Enumerable.Range(0, 256).Select(Entry)];

    public static void Write(Stream output, int width, int height, byte[] pixels, int orientation, string comment)
    {
        output.Write([0x89, (byte)'P', (byte)'N', (byte)'G', 13, 10, 26, 10]);
        var header = new byte[13];
        BinaryPrimitives.WriteInt32BigEndian(header, width);
        BinaryPrimitives.WriteInt32BigEndian(header.AsSpan(4), height);
        (header[8], header[9]) = (8, 2);
        Chunk(output, "IHDR", header);
        Chunk(output, "tEXt", Encoding.Latin1.GetBytes("Comment\0" + comment));
        // A TIFF header with one directory of one entry: tag 0x0112, one short.
        if (orientation != 1) Chunk(output, "eXIf", [(byte)'M', (byte)'M', 0, 42, 0, 0, 0, 8, 0, 1, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, (byte)orientation, 0, 0, 0, 0, 0, 0]);
        using var packed = new MemoryStream();
        using (var zlib = new ZLibStream(packed, CompressionLevel.Fastest, leaveOpen: true))
        {
            // Filter "up": neighbouring rows are alike.
            var stride = width * 3;
            var row = new byte[1 + stride];
            row[0] = 2;
            var above = new byte[stride].AsSpan();
            for (var y = 0; y < height; y++)
            {
                var here = pixels.AsSpan(y * stride, stride);
                for (var i = 0; i < here.Length; i++) row[i + 1] = (byte)(here[i] - above[i]);
                zlib.Write(row);
                above = here;
            }
        }

        Chunk(output, "IDAT", packed.ToArray());
        Chunk(output, "IEND", []);
    }

    private static void Chunk(Stream output, string name, byte[] data)
    {
        var number = new byte[4];
        BinaryPrimitives.WriteInt32BigEndian(number, data.Length);
        output.Write(number);
        var type = Encoding.ASCII.GetBytes(name);
        output.Write(type);
        output.Write(data);
        BinaryPrimitives.WriteUInt32BigEndian(number, Sum(Sum(0xFFFFFFFFu, type), data) ^ 0xFFFFFFFFu);
        output.Write(number);
    }

    private static uint Sum(uint crc, ReadOnlySpan<byte> bytes)
    {
        foreach (var value in bytes) crc = Table[(crc ^ value) & 0xFF] ^ (crc >> 8);
        return crc;
    }

    private static uint Entry(int value)
    {
        var crc = (uint)value;
        for (var bit = 0; bit < 8; bit++) crc = (crc & 1) != 0 ? 0xEDB88320u ^ (crc >> 1) : crc >> 1;
        return crc;
    }
}
