using System.Text;
using Lidoff.Evidence.Registering;

namespace Lidoff.Evidence.Tests.Registering;

/// <summary>First bytes as the formats' own specifications print them; sources stand at each recogniser.</summary>
public sealed class FileRecognisersTests
{
    private static readonly FileRecognisers All = FileRecognisers.Found();

    [Theory]
    [InlineData("FF D8 FF E0 00 10 4A 46 49 46 00", "image/jpeg")]
    [InlineData("FF D8 FF E1 00 18 45 78 69 66 00 00", "image/jpeg")]
    [InlineData("89 50 4E 47 0D 0A 1A 0A 00 00 00 0D 49 48 44 52", "image/png")]
    [InlineData("47 49 46 38 39 61 01 00 01 00", "image/gif")]
    [InlineData("47 49 46 38 37 61 01 00 01 00", "image/gif")]
    [InlineData("52 49 46 46 24 00 00 00 57 45 42 50 56 50 38 20", "image/webp")]
    [InlineData("49 49 2A 00 08 00 00 00", "image/tiff")]
    [InlineData("4D 4D 00 2A 00 00 00 08", "image/tiff")]
    [InlineData("49 49 2B 00 08 00 00 00", "image/tiff")]
    [InlineData("00 00 00 18 66 74 79 70 68 65 69 63 00 00 00 00 6D 69 66 31 68 65 69 63", "image/heic")]
    [InlineData("00 00 00 18 66 74 79 70 6D 69 66 31 00 00 00 00 6D 69 66 31 68 65 69 63", "image/heic")]
    [InlineData("00 00 00 1C 66 74 79 70 61 76 69 66 00 00 00 00 6D 69 66 31 61 76 69 66 6D 69 61 66", "image/avif")]
    [InlineData("00 00 00 1C 66 74 79 70 6D 69 66 31 00 00 00 00 6D 69 66 31 61 76 69 66 6D 69 61 66", "image/avif")]
    [InlineData("00 00 00 18 66 74 79 70 69 73 6F 6D 00 00 02 00 69 73 6F 6D 61 76 63 31", "video/mp4")]
    [InlineData("00 00 00 18 66 74 79 70 6D 70 34 32 00 00 00 00 69 73 6F 6D 6D 70 34 32", "video/mp4")]
    [InlineData("00 00 00 14 66 74 79 70 71 74 20 20 00 00 02 00 71 74 20 20", "video/quicktime")]
    [InlineData("00 00 00 14 66 74 79 70 4D 34 41 20 00 00 02 00 4D 34 41 20", "application/octet-stream")]
    [InlineData("00 00 00 18 66 74 79 70 69 73", "application/octet-stream")]
    [InlineData("1A 45 DF A3 9F 42 86 81 01 42 F7 81 01 42 F2 81 04 42 F3 81 08 42 82 84 77 65 62 6D 42 87 81 04 42 85 81 02", "video/webm")]
    [InlineData("1A 45 DF A3 A3 42 86 81 01 42 F7 81 01 42 F2 81 04 42 F3 81 08 42 82 88 6D 61 74 72 6F 73 6B 61 42 87 81 04", "application/octet-stream")]
    [InlineData("1A 45 DF A3 9F 42 86 81 01", "application/octet-stream")]
    [InlineData("25 50 44 46 2D 31 2E 37 0A", "application/pdf")]
    [InlineData("50 4B 03 04 14 00 00 00", "application/zip")]
    [InlineData("50 4B 05 06 00 00 00 00", "application/zip")]
    [InlineData("52 49 46 46 24 00 00 00 57 41 56 45", "application/octet-stream")]
    [InlineData("00 01 02 03", "application/octet-stream")]
    [InlineData("", "application/octet-stream")]
    public void A_file_is_what_its_first_bytes_say(string hex, string mediaType)
    {
        var bytes = Convert.FromHexString(hex.Replace(" ", "", StringComparison.Ordinal));
        foreach (var name in new[] { "", "board.jpg", "table.csv", "../../x.pdf", "a.html" })
            Assert.Equal(mediaType, All.Recognise(FileHead.Of(bytes, name)).MediaType);
    }

    [Theory]
    [InlineData("time_s,current_a\n0,0.001\n1,0.002\n", "x.bin", "csv")]
    [InlineData("Zeit;Strom\n0,1;3,5\n0,2;3,6\n", "", "csv")]
    [InlineData("# logger 3\nt\ti\n0\t1\n", "log.txt", "csv")]
    [InlineData("\"a, b\",c\nd,e\n", "", "csv")]
    [InlineData("one,line,only", "row.csv", "csv")]
    [InlineData("one, line, only", "letter.txt", "text")]
    [InlineData("{\"kind\":\"mark\",\"spot\":\"U3\"}\n{\"kind\":\"undo\",\"target\":\"x\"}\n", "n.csv", "json-lines")]
    [InlineData("{\n \"a\": 1\n}\n", "n.jsonl", "text")]
    [InlineData("<html><script>alert(1)</script></html>", "a.html", "text")]
    [InlineData("<svg xmlns=\"http://www.w3.org/2000/svg\"/>", "a.svg", "text")]
    [InlineData("Grüße, µA und Ω\n", "", "text")]
    public void Text_is_told_by_its_shape(string text, string name, string kind) =>
        Assert.Equal(kind, All.Recognise(FileHead.Of(Encoding.UTF8.GetBytes(text), name)).Name);

    [Fact]
    public void A_character_cut_by_the_first_look_is_still_text()
    {
        var text = string.Concat(Enumerable.Repeat("aΩ語𝛀 ", 1000));
        for (var shift = 0; shift < 12; shift++)
            Assert.Equal("text", All.Recognise(FileHead.Of(Encoding.UTF8.GetBytes(new string('x', shift) + text), "")).Name);
    }

    [Fact]
    public void A_pdf_mark_counts_within_the_first_1024_bytes_and_a_picture_before_it_wins()
    {
        byte[] pdf = [.. new byte[900], .. "%PDF-1.4"u8];
        Assert.Equal("application/pdf", All.Recognise(FileHead.Of(pdf, "")).MediaType);
        byte[] late = [.. new byte[1100], .. "%PDF-1.4"u8];
        Assert.Equal("application/octet-stream", All.Recognise(FileHead.Of(late, "")).MediaType);
        byte[] jpeg = [0xFF, 0xD8, 0xFF, 0xE0, .. new byte[50], .. "%PDF-1.4"u8];
        Assert.Equal("image/jpeg", All.Recognise(FileHead.Of(jpeg, "x.pdf")).MediaType);
        byte[] png = [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A, .. "%PDF-1.4"u8];
        Assert.Equal("image/png", All.Recognise(FileHead.Of(png, "x.pdf")).MediaType);
    }

    [Fact]
    public void No_kind_is_served_as_something_a_browser_runs() => Assert.All(
        All.Items.Select(r => r.MediaType),
        type => Assert.DoesNotContain(type, new[] { "text/html", "image/svg+xml", "application/xhtml+xml", "text/xml", "application/xml", "text/javascript" }));

    [Fact]
    public void A_stream_is_looked_at_by_its_beginning()
    {
        using var stream = new MemoryStream([.. "GIF89a"u8, .. new byte[100_000]]);
        Assert.Equal("gif", All.Recognise(stream, "x").Name);
    }
}
