using System.Net;
using System.Text.RegularExpressions;
using Lidoff.Bench.Data;
using Lidoff.Bench.Hosting;
using Lidoff.Bench.Tests.Looking;
using Microsoft.AspNetCore.Builder;

namespace Lidoff.Bench.Tests.Hosting;

/// <summary>A real workbench on a free port, with a client that sends exactly what a test says.</summary>
public sealed partial class RunningBench : IAsyncDisposable
{
    private readonly WebApplication app;
    private byte salt;

    private RunningBench(Func<BenchOptions, BenchOptions>? change)
    {
        Samples.Brindle(Bench);
        Samples.Hostile(Bench);
        var picture = "\u0089PNG\r\n\u001a\n"u8.ToArray();
        Tiles.Thumbnails[Bench.Keep(picture, "front.png")] = new(picture, "image/png");
        var options = new BenchOptions
        {
            Data = Bench,
            Tiles = Tiles,
            Program = "Lidoff.Bench.Tests",
            // Every call another fill: enough for a test, and the same each run.
            Unguessable = bytes => bytes.Fill(++salt),
            Log = line => { lock (Logged) Logged.Add(line); },
        };
        app = BenchHost.Build(change is null ? options : change(options));
    }

    public FakeBench Bench { get; } = new();

    public FakeTiles Tiles { get; } = new();

    public List<string> Logged { get; } = [];

    public HttpClient Client { get; } = new(new SocketsHttpHandler { AllowAutoRedirect = false, UseCookies = false });

    public Uri Login { get; private set; } = null!;

    public string Own => "http://127.0.0.1:" + Login.Port;

    public string Cookie { get; private set; } = "";

    public static async Task<RunningBench> Started(Func<BenchOptions, BenchOptions>? change = null)
    {
        var bench = new RunningBench(change);
        await bench.app.StartAsync();
        bench.Login = new(BenchHost.Address(bench.app));
        return bench;
    }

    public static async Task<RunningBench> LoggedIn(Func<BenchOptions, BenchOptions>? change = null)
    {
        var bench = await Started(change);
        using var answer = await bench.Client.GetAsync(bench.Login);
        bench.Cookie = answer.Headers.GetValues("Set-Cookie").Single().Split(';')[0];
        return bench;
    }

    /// <summary>Sends with the cookie, from our own page; <paramref name="change"/> may spoil it.</summary>
    public async Task<HttpResponseMessage> Send(HttpMethod method, string path, Action<HttpRequestMessage>? change = null)
    {
        using var request = new HttpRequestMessage(method, Own + path);
        if (Cookie.Length > 0) request.Headers.Add("Cookie", Cookie);
        if (method != HttpMethod.Get && method != HttpMethod.Head) request.Headers.Add("Origin", Own);
        change?.Invoke(request);
        return await Client.SendAsync(request);
    }

    public Task<HttpResponseMessage> Get(string path, Action<HttpRequestMessage>? change = null) => Send(HttpMethod.Get, path, change);

    public async Task<string> Page(string path)
    {
        using var answer = await Get(path);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return await answer.Content.ReadAsStringAsync();
    }

    /// <summary>The antiforgery token of a page and the cookies that go with it.</summary>
    public async Task<(string Token, string Cookies)> Token()
    {
        using var answer = await Get("/");
        var form = answer.Headers.GetValues("Set-Cookie").Single().Split(';')[0];
        var token = TokenField().Match(await answer.Content.ReadAsStringAsync()).Groups[1].Value;
        return (token, Cookie + "; " + form);
    }

    public async ValueTask DisposeAsync()
    {
        Client.Dispose();
        await app.StopAsync();
        await app.DisposeAsync();
        Bench.Dispose();
    }

    [GeneratedRegex("name=\"__RequestVerificationToken\" value=\"([^\"]+)\"")]
    private static partial Regex TokenField();
}
