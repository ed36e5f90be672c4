using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Net.WebSockets;
using Lidoff.Bench.Hosting;

namespace Lidoff.Bench.Tests.Hosting;

public sealed class GateTests
{
    [Theory]
    [InlineData("evil.example")]
    [InlineData("evil.example:{port}")]
    [InlineData("127.0.0.1")]
    [InlineData("127.0.0.1:1")]
    [InlineData("localhost.evil.example:{port}")]
    [InlineData("127.0.0.2:{port}")]
    public async Task A_foreign_host_is_refused_even_with_the_cookie(string host)
    {
        await using var bench = await RunningBench.LoggedIn();
        using var answer = await bench.Get("/", r => r.Headers.Host = host.Replace("{port}", bench.Login.Port.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal));
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Equal("This workbench answers only to its own address on this machine.\n", await answer.Content.ReadAsStringAsync());
    }

    [Fact]
    public async Task Localhost_is_its_own_name_too()
    {
        await using var bench = await RunningBench.LoggedIn();
        using var answer = await bench.Get("/", r => r.Headers.Host = "localhost:" + bench.Login.Port);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
    }

    [Theory]
    [InlineData("http://evil.example")]
    [InlineData("http://127.0.0.1:1")]
    [InlineData("http://localhost:{port}")]
    [InlineData("https://127.0.0.1:{port}")]
    [InlineData("null")]
    [InlineData("")]
    public async Task Orders_from_another_origin_or_none_are_refused(string origin)
    {
        await using var bench = await RunningBench.LoggedIn();
        foreach (var path in new[] { "/dossiers/brindle/files?name=x", "/_blazor/negotiate?negotiateVersion=1", "/_blazor/disconnect" })
        {
            using var answer = await bench.Send(HttpMethod.Post, path, r =>
            {
                r.Headers.Remove("Origin");
                if (origin.Length > 0) r.Headers.Add("Origin", origin.Replace("{port}", bench.Login.Port.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal));
            });
            Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
            Assert.Equal("This was asked for from another page; the workbench takes orders only from its own.\n", await answer.Content.ReadAsStringAsync());
        }
        Assert.Empty(bench.Bench.Added);
    }

    [Theory]
    [InlineData("same-site", "no-cors", 403)]
    [InlineData("cross-site", "no-cors", 403)]
    [InlineData("cross-site", "navigate", 200)]
    [InlineData("same-origin", "no-cors", 200)]
    [InlineData("none", "navigate", 200)]
    public async Task A_page_of_another_port_cannot_use_our_pictures(string site, string mode, int status)
    {
        await using var bench = await RunningBench.LoggedIn();
        var hash = bench.Tiles.Thumbnails.Keys.First();
        using var answer = await bench.Get("/thumbs/" + hash + "/320", r =>
        {
            r.Headers.Add("Sec-Fetch-Site", site);
            r.Headers.Add("Sec-Fetch-Mode", mode);
        });
        Assert.Equal(status, (int)answer.StatusCode);
    }

    [Fact]
    public async Task The_live_connection_opens_to_our_own_page_alone()
    {
        await using var bench = await RunningBench.LoggedIn();
        using var own = await Live(bench, bench.Own, bench.Cookie);
        Assert.Equal(WebSocketState.Open, own.State);
        foreach (var (origin, cookie) in new[] { ("http://evil.example", bench.Cookie), (null, bench.Cookie), (bench.Own, "") })
            await Assert.ThrowsAsync<WebSocketException>(() => Live(bench, origin, cookie));
    }

    [Fact]
    public async Task Beyond_the_most_pages_a_further_one_is_refused_until_one_closes()
    {
        await using var bench = await RunningBench.LoggedIn(o => o with { MostPages = 2 });
        var first = await Live(bench, bench.Own, bench.Cookie);
        using var second = await Live(bench, bench.Own, bench.Cookie);
        await Assert.ThrowsAsync<WebSocketException>(() => Live(bench, bench.Own, bench.Cookie));
        first.Abort();
        first.Dispose();
        for (var i = 0; ; i++)
        {
            try
            {
                using var third = await Live(bench, bench.Own, bench.Cookie);
                Assert.Equal(WebSocketState.Open, third.State);
                break;
            }
            catch (WebSocketException) when (i < 100)
            {
                await Task.Delay(20);
            }
        }
    }

    [Fact]
    public async Task Only_loopback_is_bound_whatever_the_environment_says()
    {
        string[] names = ["ASPNETCORE_URLS", "ASPNETCORE_HTTP_PORTS", "URLS", "DOTNET_URLS", "Kestrel__Endpoints__Wide__Url", "ASPNETCORE_Kestrel__Endpoints__Wide__Url"];
        foreach (var name in names) Environment.SetEnvironmentVariable(name, name.EndsWith("PORTS", StringComparison.Ordinal) ? "0" : "http://0.0.0.0:0");
        try
        {
            await using var bench = await RunningBench.LoggedIn();
            // The kernel's own list of listening sockets: local address in hex, state 0A = listening.
            var port = bench.Login.Port.ToString("X4", CultureInfo.InvariantCulture);
            var listening = new[] { "/proc/net/tcp", "/proc/net/tcp6" }.Where(File.Exists).SelectMany(File.ReadLines)
                .Select(l => l.Split(' ', StringSplitOptions.RemoveEmptyEntries))
                .Where(l => l.Length > 3 && l[3] == "0A" && l[1].EndsWith(":" + port, StringComparison.Ordinal))
                .Select(l => l[1]).ToList();
            Assert.Equal(["0100007F:" + port], listening);
            using var other = new TcpClient();
            await Assert.ThrowsAnyAsync<SocketException>(() => other.ConnectAsync(IPAddress.Parse("127.0.0.2"), bench.Login.Port));
        }
        finally
        {
            foreach (var name in names) Environment.SetEnvironmentVariable(name, null);
        }
    }

    [Fact]
    public async Task A_taken_port_is_said_and_not_thrown()
    {
        await using var bench = await RunningBench.Started();
        var second = await BenchHost.Run(
            new() { Data = bench.Bench, Program = "Lidoff.Bench.Tests", Unguessable = b => b.Fill(1), Port = bench.Login.Port },
            _ => Assert.Fail("not ready"),
            CancellationToken.None);
        Assert.StartsWith("Port " + bench.Login.Port + " of this machine cannot be used: ", Assert.Single(second.Faults).Say, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_breaks_inside_is_a_sentence_outside_and_logged()
    {
        await using var bench = await RunningBench.LoggedIn();
        bench.Bench.Breaks = "the store's secret path";
        using var answer = await bench.Get("/dossiers/brindle");
        Assert.Equal(HttpStatusCode.InternalServerError, answer.StatusCode);
        Assert.Equal("Something went wrong in Lidoff itself. Nothing that was stored is lost; the command line says more.\n", await answer.Content.ReadAsStringAsync());
        Assert.Contains(bench.Logged, l => l.Contains("the store's secret path", StringComparison.Ordinal));
    }

    private static async Task<ClientWebSocket> Live(RunningBench bench, string? origin, string cookie)
    {
        var socket = new ClientWebSocket();
        if (origin is not null) socket.Options.SetRequestHeader("Origin", origin);
        if (cookie.Length > 0) socket.Options.SetRequestHeader("Cookie", cookie);
        try
        {
            await socket.ConnectAsync(new("ws://127.0.0.1:" + bench.Login.Port + "/_blazor"), CancellationToken.None);
            return socket;
        }
        catch
        {
            socket.Dispose();
            throw;
        }
    }
}
