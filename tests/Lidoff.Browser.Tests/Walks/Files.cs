using System.Buffers.Binary;
using System.IO.Compression;
using System.Text;
using Lidoff.Seeing.Rendering;
using Microsoft.Playwright;

namespace Lidoff.Browser.Tests.Walks;

/// <summary>Files as a person, or somebody else, might choose them.</summary>
internal static class Files
{
    private static readonly Lazy<byte[]> Rendered = new(() =>
    {
        using var png = new MemoryStream();
        SceneRenderer.Render(Brindle.LampTop()).WritePng(png);
        return png.ToArray();
    });

    /// <summary>A small board of the invented device, as PNG.</summary>
    public static byte[] Board => Rendered.Value;

    public static FilePayload Picture(string name = "board.png") => Of(name, Board);

    /// <summary>The same, broken off in the middle.</summary>
    public static FilePayload Truncated => Of("cut.png", Board[..(Board.Length / 2)]);

    /// <summary>Words with the ending of a picture.</summary>
    public static FilePayload WordsAsPicture => Of("words.jpg", Encoding.UTF8.GetBytes("Board revision B, measured on the bench.\n"));

    /// <summary>A picture with the ending of words.</summary>
    public static FilePayload PictureAsWords => Of("notes.txt", Board);

    /// <summary>A PNG of 200 bytes whose header promises 50,000 × 40,000 pixels (PNG specification, third edition, 5 and 11.2.1).</summary>
    public static FilePayload TwoGigapixels
    {
        get
        {
            using var png = new MemoryStream();
            png.Write([0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A]);
            var header = new byte[13];
            BinaryPrimitives.WriteInt32BigEndian(header, 50_000);
            BinaryPrimitives.WriteInt32BigEndian(header.AsSpan(4), 40_000);
            header[8] = 8;
            Chunk(png, "IHDR", header);
            using var packed = new MemoryStream();
            using (var zlib = new ZLibStream(packed, CompressionLevel.Fastest, leaveOpen: true)) zlib.Write(new byte[1000]);
            Chunk(png, "IDAT", packed.ToArray());
            Chunk(png, "IEND", []);
            return Of("huge.png", png.ToArray());
        }
    }

    public static FilePayload Of(string name, byte[] bytes) => new() { Name = name, MimeType = "application/octet-stream", Buffer = bytes };

    private static void Chunk(Stream into, string kind, byte[] data)
    {
        var body = Encoding.ASCII.GetBytes(kind).Concat(data).ToArray();
        Span<byte> number = stackalloc byte[4];
        BinaryPrimitives.WriteInt32BigEndian(number, data.Length);
        into.Write(number);
        into.Write(body);
        BinaryPrimitives.WriteUInt32BigEndian(number, Crc(body));
        into.Write(number);
    }

    // The check sum of the PNG specification, annex D.
    private static uint Crc(byte[] bytes)
    {
        var crc = 0xFFFFFFFFu;
        foreach (var each in bytes)
        {
            crc ^= each;
            for (var bit = 0; bit < 8; bit++) crc = (crc & 1) == 1 ? 0xEDB88320u ^ (crc >> 1) : crc >> 1;
        }

        return ~crc;
    }
}
