using Lidoff.Bench.Tests.Hosting;
using Lidoff.Bench.Tests.Looking;

namespace Lidoff.Bench.Tests.Components;

public sealed class PageTests
{
    [Fact]
    public async Task The_list_leads_to_each_dossier()
    {
        await using var bench = await RunningBench.LoggedIn();
        bench.Bench.Set(Samples.Empty("a/b ?#"));
        var html = await bench.Page("/");
        Assert.Contains("href=\"/dossiers/brindle\"", html, StringComparison.Ordinal);
        Assert.Contains("href=\"/dossiers/a%2Fb%20%3F%23\"", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_dossiers_page_has_everything_before_any_script_runs()
    {
        await using var bench = await RunningBench.LoggedIn();
        var html = System.Net.WebUtility.HtmlDecode(await bench.Page("/dossiers/brindle"));
        string[] said =
        [
            "Brindle, a bark counter for a dog's collar (invented)", "412 entries", "collar-board-front.jpg", "6000 × 4000 px, 8.42 MB", "52.3 px/mm ± 0.4 %", bench.Tiles.Thumbnails.Keys.First(),
            "N52832", "nRF52832", "Nordic Semiconductor", "0.96", "none of these", "0.02", "+31.2", "−0.4", "Settled to the family only.", "Nothing was seen yet that could name it.",
            "103 h", "74 to 144 h", "E3", "two independent lines", "sleep current 71 %", "checked", "<li><bdi>capacity: 310 mAh</bdi></li>", "<b>Caution:</b> <bdi>Capacity is as printed, not as measured.</bdi>", "stale: moved", "14 entries",
        ];
        Assert.All(said, s => Assert.Contains(s, html, StringComparison.Ordinal));
    }

    [Fact]
    public async Task What_strangers_wrote_is_text_and_stays_in_its_own_direction()
    {
        await using var bench = await RunningBench.LoggedIn();
        var html = await bench.Page("/dossiers/hostile");
        foreach (var live in new[] { "<script>alert", "<img src=x", "<b>bold", "<i>", "<u>", "<s>", "<t>", "<v>", "'onmouseover", "\u202E", "\u2028", "\u0007" })
            Assert.DoesNotContain(live, html, StringComparison.Ordinal);
        Assert.Contains("&lt;script&gt;alert(&#x27;mark&#x27;)&lt;/script&gt;</bdi>", html, StringComparison.Ordinal);
        Assert.Contains("&lt;script&gt;alert(&#x27;claim&#x27;)&lt;/script&gt;</bdi>", html, StringComparison.Ordinal);
        var text = System.Net.WebUtility.HtmlDecode(html);
        Assert.Contains("<bdi>safe⟨U+202E⟩gpj.exe</bdi>", text, StringComparison.Ordinal);
        Assert.Contains("<bdi>../../etc/passwd</bdi>", text, StringComparison.Ordinal);
        Assert.Contains("… (10,000 characters)</bdi>", text, StringComparison.Ordinal);
        Assert.DoesNotContain(new string('A', 401), text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_dossier_that_is_not_there_is_said()
    {
        await using var bench = await RunningBench.LoggedIn();
        using var answer = await bench.Get("/dossiers/%3Cscript%3E");
        Assert.Equal(System.Net.HttpStatusCode.NotFound, answer.StatusCode);
        Assert.Contains("There is no dossier named <bdi>&lt;script&gt;</bdi>", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }
}
