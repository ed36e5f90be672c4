using System.Net;
using System.Text;
using Lidoff.Bench.Tests.Hosting;
using Lidoff.Seeing.Rendering;

namespace Lidoff.Bench.Tests.Serving;

public sealed class LabelledTests
{
    [Fact]
    public async Task A_labelled_picture_is_taken_home_as_SVG_and_PNG()
    {
        await using var bench = await RunningBench.LoggedIn();
        var sha256 = await Add(bench, "at-home-12-Elm-Street.png");
        bench.Bench.Set("d", "", $$"""{"kind":"spot","spot":"U1","role":"radio","picture":"{{sha256}}","point":[40,50]}""", $$"""{"kind":"scale","picture":"{{sha256}}","from":[0,0],"to":[100,0],"length_mm":5}""");
        using var svg = await bench.Get($"/dossiers/d/labelled/{sha256}.svg");
        Assert.Equal((HttpStatusCode.OK, "image/svg+xml", "attachment"), (svg.StatusCode, svg.Content.Headers.ContentType!.MediaType, svg.Content.Headers.ContentDisposition!.DispositionType));
        var text = await svg.Content.ReadAsStringAsync();
        Assert.Contains("U1: radio", text, StringComparison.Ordinal);
        // The file's own name may say where and by whom it was taken.
        Assert.DoesNotContain("Elm", text + svg.Content.Headers.ContentDisposition, StringComparison.Ordinal);
        Assert.Equal("d-picture.svg", svg.Content.Headers.ContentDisposition!.FileNameStar ?? svg.Content.Headers.ContentDisposition.FileName!.Trim('"'));
        using var png = await bench.Get($"/dossiers/d/labelled/{sha256}.png");
        Assert.Equal("image/png", png.Content.Headers.ContentType!.MediaType);
        // PNG specification, third edition, 5.2: the signature.
        Assert.Equal([0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A], (await png.Content.ReadAsByteArrayAsync())[..8]);
        Assert.Equal("default-src 'none'; sandbox; frame-ancestors 'none'", png.Headers.GetValues("Content-Security-Policy").Single());
    }

    [Fact]
    public async Task What_is_no_picture_of_the_dossier_is_not_there()
    {
        await using var bench = await RunningBench.LoggedIn();
        var sha256 = await Add(bench, "board.png");
        bench.Bench.Set("other", "");
        foreach (var path in new[] { $"other/labelled/{sha256}.svg", $"nobody/labelled/{sha256}.svg", $"d/labelled/{sha256}.gif", "d/labelled/x.svg", $"d/labelled/{new string('a', 64)}.png" })
        {
            using var answer = await bench.Get("/dossiers/" + path);
            Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        }
    }

    private static async Task<string> Add(RunningBench bench, string name)
    {
        bench.Bench.Set("d", "");
        using var png = new MemoryStream();
        SceneRenderer.Render(Brindle.LampTop()).WritePng(png);
        png.Position = 0;
        return (await bench.Bench.Add("d", name, png, "drop", CancellationToken.None)).Value.Sha256;
    }
}
