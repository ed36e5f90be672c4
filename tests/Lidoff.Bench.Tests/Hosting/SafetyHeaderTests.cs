using System.Text.RegularExpressions;

namespace Lidoff.Bench.Tests.Hosting;

public sealed partial class SafetyHeaderTests
{
    [Fact]
    public async Task Every_answer_carries_them_whatever_it_is()
    {
        await using var bench = await RunningBench.LoggedIn();
        var hash = bench.Tiles.Thumbnails.Keys.First();
        (string Path, string? Host, string Cookie, int Status)[] asks =
        [
            ("/", null, bench.Cookie, 200), ("/dossiers/brindle", null, bench.Cookie, 200), ("/files/" + hash, null, bench.Cookie, 200), ("/dossiers/none", null, bench.Cookie, 404),
            ("/_framework/blazor.web.js", null, bench.Cookie, 200), ("/nothing/at/all", null, bench.Cookie, 404), ("/", "evil.example", bench.Cookie, 400), ("/", null, "", 401),
        ];
        foreach (var (path, host, cookie, status) in asks)
        {
            using var answer = await bench.Get(path, r =>
            {
                r.Headers.Host = host;
                r.Headers.Remove("Cookie");
                if (cookie.Length > 0) r.Headers.Add("Cookie", cookie);
            });
            Assert.Equal((path, status), (path, (int)answer.StatusCode));
            string Of(string name) => Assert.Single(answer.Headers.GetValues(name));
            Assert.StartsWith("default-src 'none'; ", Of("Content-Security-Policy"), StringComparison.Ordinal);
            Assert.Contains("frame-ancestors 'none'", Of("Content-Security-Policy"), StringComparison.Ordinal);
            Assert.DoesNotContain("unsafe", Of("Content-Security-Policy"), StringComparison.Ordinal);
            Assert.DoesNotContain("evil", Of("Content-Security-Policy"), StringComparison.Ordinal);
            Assert.Equal("nosniff", Of("X-Content-Type-Options"));
            Assert.Equal("no-referrer", Of("Referrer-Policy"));
            Assert.Equal("DENY", Of("X-Frame-Options"));
            Assert.Equal("same-origin", Of("Cross-Origin-Resource-Policy"));
            Assert.Equal("same-origin", Of("Cross-Origin-Opener-Policy"));
            Assert.False(answer.Headers.Contains("Server"));
        }
    }

    [Theory]
    [InlineData("/")]
    [InlineData("/dossiers/brindle")]
    [InlineData("/dossiers/hostile")]
    [InlineData("/dossiers/none")]
    public async Task Pages_need_nothing_that_the_policy_forbids_and_all_they_name_is_there(string path)
    {
        await using var bench = await RunningBench.LoggedIn();
        using var answer = await bench.Get(path);
        var html = await answer.Content.ReadAsStringAsync();
        Assert.Empty(Tags().Matches(html).Where(t => Forbidden().IsMatch(t.Value)).Select(t => t.Value));
        Assert.Empty(InlineScripts().Matches(html).Select(m => m.Value));
        var needed = Sources().Matches(html).Select(m => m.Groups[1].Value).Distinct().ToList();
        Assert.True(needed.Count >= 4);
        foreach (var source in needed)
        {
            using var got = await bench.Get("/" + source.TrimStart('/'));
            Assert.Equal((source, 200), (source, (int)got.StatusCode));
        }
        Assert.Contains(needed, s => s.StartsWith("_framework/blazor.web", StringComparison.Ordinal));
    }

    [Fact]
    public async Task The_style_fetches_nothing()
    {
        await using var bench = await RunningBench.LoggedIn();
        var css = await bench.Page("/_content/Lidoff.Bench/bench.css");
        Assert.DoesNotContain("url(", css, StringComparison.Ordinal);
        Assert.DoesNotContain("@import", css, StringComparison.Ordinal);
    }

    [GeneratedRegex("<[a-z][^>]*>")]
    private static partial Regex Tags();

    [GeneratedRegex("""\s(style|on[a-z]+)=|<(style|iframe|object|embed)\b|=["']?(javascript|data|https?):""")]
    private static partial Regex Forbidden();

    [GeneratedRegex("""<script(?![^>]*\bsrc=)[^>]*>""")]
    private static partial Regex InlineScripts();


    [GeneratedRegex("""(?:\bsrc|<link[^>]*\bhref)="([^"]+)""")]
    private static partial Regex Sources();
}
