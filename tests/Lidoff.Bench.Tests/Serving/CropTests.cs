using System.Net;
using Lidoff.Bench.Tests.Hosting;
using Lidoff.Bench.Tests.Looking;

namespace Lidoff.Bench.Tests.Serving;

public sealed class CropTests
{
    [Fact]
    public async Task A_part_of_a_picture_comes_upright_and_what_is_no_part_of_one_does_not()
    {
        FakeBench? own = null;
        await using var bench = await RunningBench.LoggedIn(options => options with { PathOf = sha256 => own!.Workspace.Files.Has(sha256) ? own.Workspace.Files.PathOf(sha256) : null });
        own = bench.Bench;
        own.Set("d", "");
        var sha256 = (await own.Add("d", "top.png", new MemoryStream(GreyPng.Of(200, 100)), "drop", CancellationToken.None)).Value.Sha256;
        using var crop = await bench.Get($"/crops/{sha256}/100,50,60,20,1.5708");
        Assert.Equal((HttpStatusCode.OK, "image/jpeg"), (crop.StatusCode, crop.Content.Headers.ContentType!.MediaType));
        Assert.Equal("default-src 'none'; sandbox; frame-ancestors 'none'", crop.Headers.GetValues("Content-Security-Policy").Single());
        foreach (var path in new[] { $"{sha256}/900,900,60,20,0", $"{sha256}/100,50,60,20", $"{sha256}/100,50,0,20,0", $"{sha256}/NaN,50,60,20,0", $"{sha256}/1e300,50,60,20,0", $"{sha256}/100,50,1e9,20,0", $"{new string('a', 64)}/100,50,60,20,0", "..%2f..%2fx/100,50,60,20,0" })
        {
            using var answer = await bench.Get("/crops/" + path);
            Assert.True(answer.StatusCode == HttpStatusCode.NotFound, path);
        }
    }
}
