using System.Net;
using Lidoff.Bench.Tests.Hosting;

namespace Lidoff.Bench.Tests.Serving;

public sealed class UploadTests
{
    [Theory]
    [InlineData("board.jpg", "board.jpg")]
    [InlineData("../../etc/passwd", "passwd")]
    [InlineData("C:\\Users\\x\\board.jpg", "board.jpg")]
    public async Task A_file_is_taken_in_under_its_bare_name(string sent, string kept)
    {
        await using var bench = await RunningBench.LoggedIn();
        var bytes = Enumerable.Range(0, 300_000).Select(i => (byte)i).ToArray();
        using var answer = await Upload(bench, "brindle", sent, new ByteArrayContent(bytes));
        Assert.Equal(HttpStatusCode.Created, answer.StatusCode);
        var added = Assert.Single(bench.Bench.Added);
        Assert.Equal(("brindle", kept), (added.Dossier, added.FileName));
        Assert.Equal(bytes, added.Bytes);
        Assert.StartsWith("{\"dossier\":\"brindle\",\"sha256\":\"", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_on_an_empty_bench_begins_a_dossier()
    {
        await using var bench = await RunningBench.LoggedIn();
        using var first = await Upload(bench, "", "a.txt", new ByteArrayContent("one"u8.ToArray()));
        using var second = await Upload(bench, "", "b.txt", new ByteArrayContent("two"u8.ToArray()));
        Assert.StartsWith("{\"dossier\":\"device-1\",", await first.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.StartsWith("{\"dossier\":\"device-2\",", await second.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_empty_file_is_refused()
    {
        await using var bench = await RunningBench.LoggedIn();
        using var answer = await Upload(bench, "brindle", "board.jpg", new ByteArrayContent([]));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Equal("The file is empty; copy it again from where it came. Nothing of it was kept.\n", await answer.Content.ReadAsStringAsync());
        Assert.Empty(bench.Bench.Added);
    }

    [Fact]
    public async Task Without_the_pages_token_nothing_is_taken()
    {
        await using var bench = await RunningBench.LoggedIn();
        using var none = await bench.Send(HttpMethod.Post, "/dossiers/brindle/files?name=x", r => r.Content = new ByteArrayContent([1]));
        Assert.Equal(HttpStatusCode.BadRequest, none.StatusCode);
        Assert.Equal("The page is older than this start of the workbench; load it again, then send the file once more.\n", await none.Content.ReadAsStringAsync());
        var (token, _) = await bench.Token();
        using var tokenAlone = await bench.Send(HttpMethod.Post, "/dossiers/brindle/files?name=x", r =>
        {
            r.Headers.Add("X-Lidoff-Token", token);
            r.Content = new ByteArrayContent([1]);
        });
        Assert.Equal(HttpStatusCode.BadRequest, tokenAlone.StatusCode);
        Assert.Empty(bench.Bench.Added);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task A_file_beyond_the_cap_is_refused_whether_it_says_its_length_or_not(bool chunked)
    {
        await using var bench = await RunningBench.LoggedIn(o => o with { MostUploadBytes = 100_000 });
        using var fits = await Upload(bench, "brindle", "x", new ByteArrayContent(new byte[100_000]));
        Assert.Equal(HttpStatusCode.Created, fits.StatusCode);
        using var answer = await Upload(bench, "brindle", "x", new ByteArrayContent(new byte[100_001]), chunked);
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, answer.StatusCode);
        Assert.Equal("The file is larger than the 100 kB that one upload may have; add it with `lidoff add`. Nothing of it was kept.\n", await answer.Content.ReadAsStringAsync());
        Assert.Single(bench.Bench.Added);
    }

    [Fact]
    public async Task A_refused_file_says_why_and_unknown_places_are_not_found()
    {
        await using var bench = await RunningBench.LoggedIn();
        bench.Bench.Refuses = new("x", "a whole file", "The picture ends in its middle.");
        using var refused = await Upload(bench, "brindle", "x", new ByteArrayContent([1]));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.StatusCode);
        Assert.Equal("The picture ends in its middle.\n", await refused.Content.ReadAsStringAsync());
        using var nowhere = await Upload(bench, "none", "x", new ByteArrayContent([1]));
        Assert.Equal(HttpStatusCode.NotFound, nowhere.StatusCode);
        using var nameless = await Upload(bench, "brindle", "a/..", new ByteArrayContent([1]));
        Assert.Equal("The file came without a name; send it as ?name=…\n", await nameless.Content.ReadAsStringAsync());
    }

    private static async Task<HttpResponseMessage> Upload(RunningBench bench, string dossier, string name, HttpContent body, bool chunked = false)
    {
        var (token, cookies) = await bench.Token();
        return await bench.Send(HttpMethod.Post, $"{(dossier.Length == 0 ? "" : "/dossiers/" + dossier)}/files?name={Uri.EscapeDataString(name)}", r =>
        {
            r.Headers.Remove("Cookie");
            r.Headers.Add("Cookie", cookies);
            r.Headers.Add("X-Lidoff-Token", token);
            r.Headers.TransferEncodingChunked = chunked;
            r.Content = body;
        });
    }
}
