using System.Net;
using Lidoff.Bench.Hosting;

namespace Lidoff.Bench.Tests.Hosting;

public sealed class LoginTests
{
    [Fact]
    public async Task The_key_opens_one_session_and_leaves_the_address()
    {
        await using var bench = await RunningBench.Started(o => o with { Start = "/dossiers/brindle" });
        Assert.Matches("^http://127\\.0\\.0\\.1:[0-9]+/\\?key=[0-9a-f]{64}$", bench.Login.ToString());
        Assert.Equal("Lidoff is ready at http://127.0.0.1:9/?key=a", BenchHost.ReadyLine("http://127.0.0.1:9/?key=a"));
        using var answer = await bench.Client.GetAsync(bench.Login);
        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        Assert.Equal("/dossiers/brindle", answer.Headers.Location!.ToString());
        var cookie = answer.Headers.GetValues("Set-Cookie").Single();
        Assert.Contains("; httponly", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("; samesite=strict", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("expires", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain(bench.Login.Query[5..], cookie, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_used_key_is_refused_and_a_wrong_one_spends_nothing()
    {
        await using var bench = await RunningBench.Started();
        using var wrong = await bench.Client.GetAsync(new Uri(bench.Own + "/?key=" + new string('0', 64)));
        Assert.Equal(HttpStatusCode.Unauthorized, wrong.StatusCode);
        using var head = await bench.Client.SendAsync(new(HttpMethod.Head, bench.Login));
        Assert.Equal(HttpStatusCode.Unauthorized, head.StatusCode);
        using var first = await bench.Client.GetAsync(bench.Login);
        Assert.Equal(HttpStatusCode.Redirect, first.StatusCode);
        using var second = await bench.Client.GetAsync(bench.Login);
        Assert.Equal(HttpStatusCode.Unauthorized, second.StatusCode);
        Assert.False(second.Headers.Contains("Set-Cookie"));
        Assert.Equal("This workbench is open to the browser that used its key. Stop it and start `lidoff bench` again for a new key.\n", await second.Content.ReadAsStringAsync());
    }

    [Fact]
    public async Task Of_many_logins_at_once_one_gets_in()
    {
        await using var bench = await RunningBench.Started();
        var answers = await Task.WhenAll(Enumerable.Range(0, 20).Select(_ => bench.Client.GetAsync(bench.Login)));
        Assert.Single(answers, a => a.StatusCode == HttpStatusCode.Redirect);
        foreach (var answer in answers) answer.Dispose();
    }

    [Theory]
    [InlineData("/")]
    [InlineData("/dossiers/brindle")]
    [InlineData("/files/0000000000000000000000000000000000000000000000000000000000000000")]
    [InlineData("/thumbs/x/320")]
    [InlineData("/_content/Lidoff.Bench/bench.css")]
    [InlineData("/_framework/blazor.web.js")]
    [InlineData("/_blazor")]
    [InlineData("/nothing")]
    public async Task Without_the_cookie_nothing_answers(string path)
    {
        await using var bench = await RunningBench.Started();
        foreach (var cookie in new[] { "", "lidoff-1=x", "lidoff-" + bench.Login.Port + "=" + new string('0', 64) })
        {
            using var answer = await bench.Get(path, r =>
            {
                if (cookie.Length > 0) r.Headers.Add("Cookie", cookie);
            });
            Assert.Equal(HttpStatusCode.Unauthorized, answer.StatusCode);
        }
        using var negotiate = await bench.Send(HttpMethod.Post, "/_blazor/negotiate?negotiateVersion=1");
        Assert.Equal(HttpStatusCode.Unauthorized, negotiate.StatusCode);
        using var upload = await bench.Send(HttpMethod.Post, "/dossiers/brindle/files?name=x");
        Assert.Equal(HttpStatusCode.Unauthorized, upload.StatusCode);
    }

    [Fact]
    public async Task A_session_of_one_bench_is_no_session_of_the_next()
    {
        await using var first = await RunningBench.LoggedIn();
        await using var second = await RunningBench.Started(o => o with { Unguessable = b => b.Fill(77) });
        var cookie = first.Cookie.Replace(first.Login.Port + "=", second.Login.Port + "=", StringComparison.Ordinal);
        using var answer = await second.Get("/", r => r.Headers.Add("Cookie", cookie));
        Assert.Equal(HttpStatusCode.Unauthorized, answer.StatusCode);
    }
}
