using System.Net;
using Lidoff.Bench.Rooms.Trace.Book;
using Lidoff.Bench.Tests.Hosting;
using Lidoff.Bench.Tests.Looking;

namespace Lidoff.Bench.Tests.Serving;

public sealed class FlatTests
{
    [Fact]
    public async Task A_page_of_the_book_comes_flat_under_its_stamp_and_under_no_other()
    {
        await using var bench = await RunningBench.LoggedIn();
        bench.Bench.Set("d", "");
        string[] shas =
        [
            (await bench.Bench.Add("d", "top.png", new MemoryStream(GreyPng.Of(200, 100)), "drop", CancellationToken.None)).Value.Sha256,
            (await bench.Bench.Add("d", "bottom.png", new MemoryStream(GreyPng.Of(200, 102)), "drop", CancellationToken.None)).Value.Sha256,
        ];
        bench.Bench.Set("d", "",
            $$"""{"kind":"picture","file":"{{shas[0]}}","side":"top"}""", $$"""{"kind":"picture","file":"{{shas[1]}}","side":"bottom"}""",
            $$"""{"kind":"landmark","landmark":"H1","picture":"{{shas[0]}}","point":[20,20]}""", $$"""{"kind":"landmark","landmark":"H2","picture":"{{shas[0]}}","point":[180,80]}""",
            $$"""{"kind":"landmark","landmark":"H1","picture":"{{shas[1]}}","point":[180,20]}""", $$"""{"kind":"landmark","landmark":"H2","picture":"{{shas[1]}}","point":[20,80]}""");
        var page = bench.Bench.View("d", dossier => BookView.Of(dossier))!.PageOf(shas[1])!;
        var query = $"?left={shas[0]}&right={shas[1]}&glass=0";
        using var flat = await bench.Get($"/dossiers/d/flat/{shas[1]}/{page.Lay!.Stamp}.webp{query}");
        Assert.Equal((HttpStatusCode.OK, "image/webp"), (flat.StatusCode, flat.Content.Headers.ContentType!.MediaType));
        Assert.Equal("default-src 'none'; sandbox; frame-ancestors 'none'", flat.Headers.GetValues("Content-Security-Policy").Single());
        // RFC 9649, 2.4: RIFF, its length, WEBP.
        var bytes = await flat.Content.ReadAsByteArrayAsync();
        Assert.Equal("RIFF"u8.ToArray(), bytes[..4]);
        Assert.Equal("WEBP"u8.ToArray(), bytes[8..12]);
        foreach (var path in new[] { $"d/flat/{shas[1]}/000000000000.webp{query}", $"nobody/flat/{shas[1]}/{page.Lay.Stamp}.webp{query}", $"d/flat/{new string('a', 64)}/{page.Lay.Stamp}.webp{query}", $"d/flat/..%2f..%2fx/{page.Lay.Stamp}.webp{query}" })
        {
            using var answer = await bench.Get("/dossiers/" + path);
            Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        }
    }
}
