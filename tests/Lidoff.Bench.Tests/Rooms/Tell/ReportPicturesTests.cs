using Lidoff.Bench.Tests.Looking;
using Lidoff.Telling.Dossiers;
using Lidoff.Telling.Drawing.Labelling;
using Lidoff.Telling.Reporting;
using Lidoff.Telling.Writing;

namespace Lidoff.Bench.Tests.Rooms.Tell;

/// <summary>
/// What leaves the bench of pictures that lie on one board. By hand: front.png is 120 × 90 px with 10 px/mm; other.png shows the same at 20 px/mm from 40 px
/// at the left and 30 px above, and alone has a known length.
/// </summary>
public sealed class ReportPicturesTests : IDisposable
{
    private static readonly (string Name, int X, int Y)[] Landmarks = [("H1", 10, 10), ("H2", 90, 12), ("H3", 88, 70), ("H4", 12, 68)];

    private readonly FakeBench bench = new();

    public void Dispose() => bench.Dispose();

    [Fact]
    public async Task A_picture_without_a_known_length_has_the_boards_scale_in_the_report_and_in_the_labelled_picture()
    {
        var front = await Board();
        var html = Html();
        // 0.35 of 120 px at 10 px/mm is 4.2 mm; the largest round length below is 2 mm, 20 px.
        Assert.Contains("2 mm", Figure(html, front), StringComparison.Ordinal);
        Assert.Contains("by the board</text>", Figure(html, front), StringComparison.Ordinal);
        Assert.Contains("Its scale is that of the board it lies on, known to ±", Figure(html, front), StringComparison.Ordinal);
        Assert.DoesNotContain("No scale is known", html, StringComparison.Ordinal);
        var (svg, along) = Labelled(front);
        Assert.Contains("scale by the board", svg, StringComparison.Ordinal);
        Assert.DoesNotContain("no scale known", svg, StringComparison.Ordinal);
        Assert.True(along.ByBoard);
        Assert.Equal(10, along.PxPerMm, 1);
    }

    [Fact]
    public async Task No_leader_strikes_out_the_words_of_a_length()
    {
        var front = await Board();
        bench.Set("d", "", $$"""{"kind":"spot","spot":"U1","picture":"{{front}}","point":[50,40],"role":"radio"}""", $$"""{"kind":"length","spot":"U1","what":"width","picture":"{{front}}","from":[30,40],"to":[60,40]}""");
        var figure = Figure(Html(), front);
        var leader = figure.LastIndexOf("class=\"leader\"", StringComparison.Ordinal);
        // What is drawn later lies above.
        Assert.True(leader > 0 && leader < figure.IndexOf("class=\"measured-words\"", StringComparison.Ordinal), "a leader lies over words");
    }

    [Fact]
    public async Task A_reader_is_told_which_pictures_lie_on_one_board_by_which_landmarks_and_how_well()
    {
        await Board();
        var pictures = Pictures(Html());
        Assert.Matches("board\\.png and other\\.png lie on one board, laid by the landmarks H1, H2, H3 and H4, which agree within [0-9]+ µm\\.", pictures);
        Assert.DoesNotMatch("[0-9a-f]{12}", pictures.Split("<figure")[0]);
    }

    [Fact]
    public async Task What_was_left_out_of_a_board_is_told_there()
    {
        await Board(("H3", 20, 5), ("H4", 100, 60));
        Assert.Contains("board.png” was left out", Pictures(Html()), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_picture_is_called_after_its_side_and_its_number_and_never_after_its_file()
    {
        var front = await Board();
        bench.Set("d", "", $$"""{"kind":"picture","file":"{{front}}","name":"Ann's desk","side":"top"}""");
        Assert.Equal("d-front-1", bench.View("d", open => TakeHomeName.Of(open.Session.View, open.Model, front)));
        var other = bench.View("d", open => open.Model.Picture("other.png").Sha256)!;
        Assert.Equal("d-front-2", bench.View("d", open => TakeHomeName.Of(open.Session.View, open.Model, other)));
        bench.Set("d", "", $$"""{"kind":"picture","file":"{{other}}","side":"bottom"}""");
        Assert.Equal("d-back", bench.View("d", open => TakeHomeName.Of(open.Session.View, open.Model, other)));
    }

    private async Task<string> Board(params (string Name, int X, int Y)[] moved)
    {
        bench.Set("d", "");
        var here = (await bench.Add("d", "board.png", new MemoryStream(GreyPng.Of(120, 90)), "drop", CancellationToken.None)).Value.Sha256;
        var there = (await bench.Add("d", "other.png", new MemoryStream(GreyPng.Of(300, 220)), "drop", CancellationToken.None)).Value.Sha256;
        bench.Set(
            "d", "",
            [
                .. Landmarks.Select(each => moved.Append(each).First(other => other.Name == each.Name)).Select(each => Seen(each.Name, here, each.X, each.Y)),
                .. Landmarks.Select(each => Seen(each.Name, there, 40 + (2 * each.X), 30 + (2 * each.Y))),
                $$"""{"kind":"picture","file":"{{here}}","specimen":"A","side":"top"}""", $$"""{"kind":"picture","file":"{{there}}","specimen":"A","side":"top"}""",
                $$"""{"kind":"scale","picture":"{{there}}","from":[40,30],"to":[240,30],"length_mm":10}""",
                $$"""{"kind":"spot","spot":"U1","specimen":"A","picture":"{{here}}","point":[50,40]}""",
            ]);
        return here;
    }

    private static string Seen(string name, string sha256, int x, int y) => $$"""{"kind":"landmark","landmark":"{{name}}","specimen":"A","picture":"{{sha256}}","point":[{{x}},{{y}}]}""";

    private string Html() => bench.View("d", open => System.Net.WebUtility.HtmlDecode(HtmlWriter.Write(ReportBuilder.Build(open.Session.View, open.Model, ReportFolder.Shown(open, _ => { }), OpenDossier.Program))))!;

    private (string Svg, BarScale Scale) Labelled(string sha256)
    {
        var picture = bench.View("d", open => DossierPicture.Gather(open.Session.View, open.Model, sha256, open.Workspace.Files.PathOf(sha256), new()).Value)!;
        return (picture.Draw().Value.Svg(), picture.Scale!);
    }

    private static string Pictures(string html) => html.Split("<section id=\"pictures\"")[1].Split("</section>")[0];

    private static string Figure(string html, string sha256) => html.Split($"<figure id=\"picture-{sha256[..12]}\"")[1].Split("</figure>")[0];
}
