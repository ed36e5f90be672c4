using Lidoff.Bench.Tests.Hosting;
using Lidoff.Bench.Tests.Looking;

namespace Lidoff.Bench.Tests.Components;

public sealed class PageTests
{
    [Fact]
    public async Task The_list_leads_to_each_dossier()
    {
        await using var bench = await RunningBench.LoggedIn();
        var html = await bench.Page("/");
        Assert.Contains("href=\"/dossiers/brindle\"", html, StringComparison.Ordinal);
        Assert.Contains("href=\"/dossiers/hostile\"", html, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "11 entries")]
    [InlineData("/name", "nRF52832")]
    [InlineData("/name", "Nordic Semiconductor")]
    [InlineData("/reckon", "runtime")]
    [InlineData("/reckon", "long side of U1")]
    [InlineData("/tell", "C1")]
    [InlineData("/open", "cut the seam")]
    [InlineData("/trace", "U1.13")]
    public async Task A_room_has_everything_before_any_script_runs(string room, string said)
    {
        await using var bench = await RunningBench.LoggedIn();
        var html = System.Net.WebUtility.HtmlDecode(await bench.Page("/dossiers/brindle" + room));
        Assert.Contains(said, html, StringComparison.Ordinal);
        Assert.Contains("Invented device, invented data.", html, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("/open")]
    [InlineData("/see")]
    [InlineData("/name")]
    [InlineData("/trace")]
    [InlineData("/reckon")]
    [InlineData("/tell")]
    public async Task What_strangers_wrote_is_text_and_stays_in_its_own_direction(string room)
    {
        await using var bench = await RunningBench.LoggedIn();
        var html = await bench.Page("/dossiers/hostile" + room);
        foreach (var live in new[] { "<script>alert", "<img src=x", "<b>bold", "<i>", "<u>", "'onmouseover", "\u202E", "\u2028", "\u0007" })
            Assert.DoesNotContain(live, html, StringComparison.Ordinal);
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
