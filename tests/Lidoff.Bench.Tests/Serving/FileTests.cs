using System.Net;
using System.Net.Http.Headers;
using Lidoff.Bench.Tests.Hosting;

namespace Lidoff.Bench.Tests.Serving;

public sealed class FileTests
{
    [Fact]
    public async Task A_range_of_a_file_is_sent_alone()
    {
        await using var bench = await RunningBench.LoggedIn();
        byte[] bytes = [0xFF, 0xD8, 0xFF, 0xE0, .. Enumerable.Range(0, 250_000).Select(i => (byte)i)];
        var path = "/files/" + bench.Bench.Keep(bytes, "board.jpg");
        using var part = await bench.Get(path, r => r.Headers.Range = new(1000, 1999));
        Assert.Equal(HttpStatusCode.PartialContent, part.StatusCode);
        Assert.Equal(new ContentRangeHeaderValue(1000, 1999, bytes.Length), part.Content.Headers.ContentRange);
        Assert.Equal(bytes[1000..2000], await part.Content.ReadAsByteArrayAsync());
        using var tail = await bench.Get(path, r => r.Headers.Range = new(null, 5));
        Assert.Equal(bytes[^5..], await tail.Content.ReadAsByteArrayAsync());
        using var beyond = await bench.Get(path, r => r.Headers.Range = new(9_000_000, null));
        Assert.Equal(HttpStatusCode.RequestedRangeNotSatisfiable, beyond.StatusCode);
        using var whole = await bench.Get(path);
        Assert.Equal("bytes", whole.Headers.AcceptRanges.Single());
        Assert.Equal(bytes, await whole.Content.ReadAsByteArrayAsync());
        using var known = await bench.Get(path, r => r.Headers.IfNoneMatch.Add(whole.Headers.ETag!));
        Assert.Equal(HttpStatusCode.NotModified, known.StatusCode);
    }

    [Theory]
    [InlineData("<html><script>alert(1)</script></html>", "page.html", "text/plain", "attachment")]
    [InlineData("<svg xmlns=\"http://www.w3.org/2000/svg\" onload=\"alert(1)\"/>", "board.jpg", "text/plain", "attachment")]
    [InlineData("GIF89a", "x.html", "image/gif", "inline")]
    [InlineData("%PDF-1.7", "x.pdf", "application/pdf", "attachment")]
    [InlineData("\0\u0001", "x.exe", "application/octet-stream", "attachment")]
    public async Task A_hostile_file_cannot_run(string content, string name, string type, string disposition)
    {
        await using var bench = await RunningBench.LoggedIn();
        var hash = bench.Bench.Keep(System.Text.Encoding.UTF8.GetBytes(content), name);
        using var answer = await bench.Get("/files/" + hash);
        Assert.Equal((type, disposition), (answer.Content.Headers.ContentType!.MediaType, answer.Content.Headers.ContentDisposition!.DispositionType));
        Assert.Equal("default-src 'none'; sandbox; frame-ancestors 'none'", answer.Headers.GetValues("Content-Security-Policy").Single());
    }

    [Fact]
    public async Task A_hostile_name_breaks_no_header()
    {
        await using var bench = await RunningBench.LoggedIn();
        var hash = bench.Bench.Keep("x"u8.ToArray(), "a\r\nSet-Cookie: x=1\"; filename=evil.exe; \u202Ejpg");
        using var answer = await bench.Get("/files/" + hash);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.False(answer.Headers.Contains("Set-Cookie"));
        var name = answer.Content.Headers.ContentDisposition!.FileNameStar!;
        Assert.Equal("a⟨U+000D⟩⟨U+000A⟩Set-Cookie: x=1\"; filename=evil.exe; ⟨U+202E⟩jpg", name);
    }

    [Theory]
    [InlineData("/files/..%2f..%2f..%2fetc%2fpasswd")]
    [InlineData("/files/../../../etc/passwd")]
    [InlineData("/files/%2e%2e/%2e%2e/etc/passwd")]
    [InlineData("/files/ABCDEF0000000000000000000000000000000000000000000000000000000000")]
    [InlineData("/files/0000000000000000000000000000000000000000000000000000000000000000")]
    [InlineData("/_content/Lidoff.Bench/..%2f..%2f..%2flidoff.db")]
    [InlineData("/_content/Lidoff.Bench/%2e%2e/%2e%2e/Lidoff.Bench.Tests.dll")]
    [InlineData("/Lidoff.Bench.Tests.staticwebassets.endpoints.json")]
    [InlineData("/thumbs/..%2f..%2fetc/320")]
    [InlineData("/tiles/..%2f..%2fetc")]
    public async Task No_address_leads_out_of_the_store(string path)
    {
        await using var bench = await RunningBench.LoggedIn();
        // A Uri would tidy the dots away before sending; a raw line does not.
        using var socket = new System.Net.Sockets.TcpClient();
        await socket.ConnectAsync(IPAddress.Loopback, bench.Login.Port);
        await using var stream = socket.GetStream();
        await stream.WriteAsync(System.Text.Encoding.ASCII.GetBytes($"GET {path} HTTP/1.1\r\nHost: 127.0.0.1:{bench.Login.Port}\r\nCookie: {bench.Cookie}\r\nConnection: close\r\n\r\n"));
        using var reader = new StreamReader(stream);
        var answer = await reader.ReadToEndAsync();
        Assert.StartsWith("HTTP/1.1 404 ", answer, StringComparison.Ordinal);
        Assert.DoesNotContain("root:", answer, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Thumbnails_come_in_few_sizes_and_tiles_by_their_place()
    {
        await using var bench = await RunningBench.LoggedIn();
        var hash = bench.Tiles.Thumbnails.Keys.First();
        using var thumb = await bench.Get($"/thumbs/{hash}/320");
        Assert.Equal(HttpStatusCode.OK, thumb.StatusCode);
        Assert.Contains("immutable", thumb.Headers.CacheControl!.ToString(), StringComparison.Ordinal);
        Assert.Equal("""{"width":4000,"height":3000,"tileSize":254,"overlap":1,"levels":13}""", await bench.Page($"/tiles/{hash}"));
        using var tile = await bench.Get($"/tiles/{hash}/12/3/4");
        Assert.Equal(HttpStatusCode.OK, tile.StatusCode);
        foreach (var path in new[] { $"/thumbs/{hash}/321", $"/thumbs/{new string('0', 64)}/320", $"/tiles/{hash}/13/0/0", $"/tiles/{hash}/-1/0/0", $"/tiles/{hash}/1/x/0" })
        {
            using var none = await bench.Get(path);
            Assert.Equal((path, HttpStatusCode.NotFound), (path, none.StatusCode));
        }
    }

    [Fact]
    public async Task A_bench_without_tiles_says_so()
    {
        await using var bench = await RunningBench.LoggedIn(o => o with { Tiles = null });
        using var thumb = await bench.Get($"/thumbs/{bench.Tiles.Thumbnails.Keys.First()}/320");
        Assert.Equal(HttpStatusCode.NotFound, thumb.StatusCode);
        Assert.Equal("No picture can be made of that file.\n", await thumb.Content.ReadAsStringAsync());
        Assert.DoesNotContain("/thumbs/", await bench.Page("/dossiers/brindle/see"), StringComparison.Ordinal);
    }
}
