using System.Buffers.Binary;
using System.IO.Compression;
using System.Text;
using Microsoft.Playwright;

namespace Lidoff.Browser.Tests.Walks;

/// <summary>Files as a person, or somebody else, might choose them.</summary>
internal static class Files
{
    /// <summary>A small board as PNG: a green field, a dark body, grain so that it does not pack to nothing.</summary>
    public static byte[] Board { get; } = Png(600, 400, (x, y, grain) => x is > 200 and < 380 && y is > 120 and < 260 ? ((byte)(20 + grain), (byte)(22 + grain), (byte)(24 + grain)) : ((byte)(40 + grain), (byte)(90 + grain), (byte)(60 + grain)));

    /// <summary>600 × 400 px of a board with a square of pure magenta around (100, 200) and one around (500, 200), 8 px wide: 400 px from middle to middle.</summary>
    public static byte[] Ruled { get; } = Png(600, 400, (x, y, grain) => y is >= 196 and < 204 && x is (>= 96 and < 104) or (>= 496 and < 504) ? ((byte)255, (byte)0, (byte)255) : ((byte)(40 + grain), (byte)(90 + grain), (byte)(60 + grain)));

    /// <summary>Eleven by eight squares of 45 px on white, ten by seven corners within.</summary>
    public static FilePayload Checkerboard { get; } = Of("target.png", Png(600, 450, (x, y, grain) =>
    {
        var (i, j) = ((int)Math.Floor((x - 52) / 45.0), (int)Math.Floor((y - 47) / 45.0));
        var ink = i is >= 0 and < 11 && j is >= 0 and < 8 && (i + j) % 2 == 0;
        var value = (byte)((ink ? 40 : 200) + grain);
        return (value, value, value);
    }));

    /// <summary>A ruler of 42 mm, every fifth and tenth line longer, 12 px from line to line.</summary>
    public static FilePayload Ruler { get; } = Of("ruler.png", Png(600, 450, (x, y, grain) =>
    {
        var number = (int)Math.Round((x - 48) / 12.0);
        var longer = (number % 5 == 0 ? 18 : 0) + (number % 10 == 0 ? 18 : 0);
        var value = (byte)((number is >= 0 and <= 42 && Math.Abs(x - 48 - (12 * number)) < 1.1 && y >= 330 && y < 354 + longer ? 45 : 205) + grain);
        return (value, value, value);
    }));

    public static FilePayload Picture(string name = "board.png") => Of(name, Board);

    /// <summary>The same, broken off in the middle.</summary>
    public static FilePayload Truncated => Of("cut.png", Board[..(Board.Length / 2)]);

    /// <summary>Words with the ending of a picture.</summary>
    public static FilePayload WordsAsPicture => Of("words.jpg", Encoding.UTF8.GetBytes("Board revision B, measured on the bench.\n"));

    /// <summary>A picture with the ending of words.</summary>
    public static FilePayload PictureAsWords => Of("notes.txt", Board);

    /// <summary>A PNG of a few bytes whose header promises 50,000 × 40,000 pixels (PNG specification, third edition, 5 and 11.2.1).</summary>
    public static FilePayload TwoGigapixels
    {
        get
        {
            using var png = new MemoryStream();
            Write(png, 50_000, 40_000, new byte[1000]);
            return Of("huge.png", png.ToArray());
        }
    }

    public static FilePayload Of(string name, byte[] bytes) => new() { Name = name, MimeType = "application/octet-stream", Buffer = bytes };

    /// <summary>The kinds of a PNG's chunks in their order.</summary>
    public static IReadOnlyList<string> Chunks(byte[] png)
    {
        var kinds = new List<string>();
        for (var at = 8; at + 12 <= png.Length; at += 12 + BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(at))) kinds.Add(Encoding.ASCII.GetString(png, at + 4, 4));
        return kinds;
    }

    private static byte[] Png(int width, int height, Func<int, int, int, (byte Red, byte Green, byte Blue)> pixel)
    {
        var rows = new byte[height * (1 + (width * 3))];
        var (at, grain) = (0, 12345u);
        for (var y = 0; y < height; y++)
        {
            rows[at++] = 0; // no filter
            for (var x = 0; x < width; x++)
            {
                grain = (grain * 1_664_525) + 1_013_904_223;
                (rows[at], rows[at + 1], rows[at + 2]) = pixel(x, y, (int)(grain >> 29));
                at += 3;
            }
        }

        using var png = new MemoryStream();
        Write(png, width, height, rows);
        return png.ToArray();
    }

    private static void Write(Stream png, int width, int height, byte[] rows)
    {
        png.Write([0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A]);
        var header = new byte[13];
        BinaryPrimitives.WriteInt32BigEndian(header, width);
        BinaryPrimitives.WriteInt32BigEndian(header.AsSpan(4), height);
        (header[8], header[9]) = (8, 2); // 8 bits a channel, red-green-blue
        Chunk(png, "IHDR", header);
        using var packed = new MemoryStream();
        using (var zlib = new ZLibStream(packed, CompressionLevel.Fastest, leaveOpen: true)) zlib.Write(rows);
        Chunk(png, "IDAT", packed.ToArray());
        Chunk(png, "IEND", []);
    }

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
