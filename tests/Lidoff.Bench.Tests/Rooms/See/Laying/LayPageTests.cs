using Bunit;
using Lidoff.Bench.Rooms.See.Laying;
using Lidoff.Bench.Tests.Looking;
using Lidoff.Evidence.Entries;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Rendering;

namespace Lidoff.Bench.Tests.Rooms.See.Laying;

/// <summary>The page that lays a picture on another, on rendered boards whose holes are where they were put.</summary>
public sealed class LayPageTests : RoomContext
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    [Fact]
    public async Task What_is_found_is_a_proposal_until_it_is_taken_over_and_then_both_pictures_lie_on_one_board()
    {
        Bench.Set("d", "");
        var (front, back) = (await Add("front.png", Board(1, bottom: false, turn: 3)), await Add("back.png", Board(1, bottom: true, turn: -8)));
        Bench.Set("d", "", $$"""{"kind":"picture","file":"{{front}}","side":"top","specimen":"A"}""", $$"""{"kind":"picture","file":"{{back}}","side":"bottom","specimen":"A"}""");
        var page = Page(front);
        On(page, "[data-key=f]", e => e.Click());
        page.WaitForElement(".laying", Patience);
        var match = Assert.Single(Stored<MatchSighting>());
        Assert.True(match.Mirrored);
        Assert.True(match.Agree >= 12, $"{match.Agree} agree");
        Assert.Empty(Stored<LandmarkSighting>());
        Assert.Empty(Bench.View("d", dossier => dossier.Model.Boards("A"))!.Boards);
        Assert.Matches($"^{match.Agree} of {match.Of} holes agree, from the other side; [0-9.]+ px are left on average.", page.Find(".laying p").TextContent);

        // All but the first.
        On(page, ".pairs input", e => e.Change(false));
        var left = match.Names.Count - 1;
        Assert.Equal($"Take over {left} landmarks", page.Find(".laying [data-key=a]").TextContent);
        On(page, ".laying [data-key=a]", e => e.Click());
        page.WaitForAssertion(() => Assert.Equal(2 * left, Stored<LandmarkSighting>().Count), Patience);
        Assert.All(Stored<LandmarkSighting>(), landmark => Assert.Matches("^[0-9a-f]{64}$", landmark.FoundBy));
        Assert.DoesNotContain(Stored<LandmarkSighting>(), landmark => landmark.Landmark == match.Names[0]);
        var laid = Assert.Single(Bench.View("d", dossier => dossier.Model.Boards("A"))!.Boards).Laid;
        Assert.Equal(2, laid.Pictures.Count);
        Assert.All(laid.Pictures, picture => Assert.Empty(picture.Remarks));
        Assert.NotEqual(laid.Picture(front)!.Mirrored, laid.Picture(back)!.Mirrored);

        await Hand.Undo("d");
        Assert.Empty(Stored<LandmarkSighting>());
    }

    [Fact]
    public async Task Two_boards_are_refused_with_a_sentence_and_nothing_is_stored()
    {
        Bench.Set("d", "");
        var (one, _) = (await Add("one.png", Board(1, bottom: false, turn: 3)), await Add("two.png", Board(2, bottom: false, turn: 0)));
        var page = Page(one);
        On(page, "[data-key=f]", e => e.Click());
        var says = page.WaitForElement("[role=status] .doubt", Patience).TextContent;
        Assert.StartsWith("Not laid: “one.png” and “two.png” do not lie on one board: ", says, StringComparison.Ordinal);
        // The sentence names a key, and the key leads there.
        Assert.Equal($"/dossiers/d/see/{one}?tool=landmark", page.Find("[data-key=k]").GetAttribute("href"));
        Assert.Empty(Stored<MatchSighting>());
        Assert.Equal(2, Stored<FileAdded>().Count);
    }

    [Fact]
    public async Task A_picture_alone_says_so()
    {
        Bench.Set("d", "");
        var page = Page(await Add("one.png", GreyPng.Of(40, 30)));
        Assert.Contains(LaySentences.NoOther, page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Pictures_whose_names_begin_alike_are_offered_first()
    {
        Bench.Set("d", "");
        foreach (var (name, i) in new[] { "band-lamp.png", "band-main-bottom.png", "band-main-top-2.png", "other.png" }.Select((name, i) => (name, i))) await Add(name, GreyPng.Of(40 + i, 30));
        var page = Page(await Add("band-main-top.png", GreyPng.Of(60, 30)));
        Assert.Equal(["band-main-top-2.png", "band-main-bottom.png", "band-lamp.png", "other.png"], page.FindAll(".lay-on option").Select(option => option.TextContent));
        Assert.Equal("band-main-top-2.png", page.FindAll(".lay-on option").Single(option => option.GetAttribute("value") == page.Find(".lay-on select").GetAttribute("value")).TextContent);
    }

    [Fact]
    public async Task The_other_side_of_another_board_is_not_offered_where_the_own_one_lies_on_it_already()
    {
        Bench.Set("d", "");
        var sides = new (string Name, string Side)[] { ("band-main-top.png", "top"), ("band-main-bottom.png", "bottom"), ("band-lamp-bottom.png", "bottom"), ("band-main-top-2.png", "top") };
        var sha256 = new List<string>();
        foreach (var (name, side) in sides)
        {
            sha256.Add(await Add(name, GreyPng.Of(100 + sha256.Count, 80)));
            Bench.Set("d", "", $$"""{"kind":"picture","file":"{{sha256[^1]}}","side":"{{side}}","specimen":"A"}""");
        }

        Assert.Equal(sha256[1], Page(sha256[0]).Find(".lay-on select").GetAttribute("value"));
        Bench.Set("d", "", [.. new[] { ("H1", 10, 10), ("H2", 90, 12), ("H3", 88, 70), ("H4", 12, 68) }.SelectMany(at => new[] { (sha256[0], at.Item2), (sha256[1], 100 - at.Item2) }
            .Select(each => $$"""{"kind":"landmark","landmark":"{{at.Item1}}","specimen":"A","picture":"{{each.Item1}}","point":[{{each.Item2}},{{at.Item3}}]}"""))]);
        var page = Page(sha256[0]);
        Assert.Contains("band-main-bottom.png, bottom (on one board already)", page.FindAll(".lay-on option").Select(option => option.TextContent));
        Assert.Equal(sha256[3], page.Find(".lay-on select").GetAttribute("value"));
    }

    private IRenderedComponent<LayPage> Page(string sha256)
    {
        var page = Render<LayPage>(parameters => parameters.Add(each => each.Name, "d").Add(each => each.Sha256, sha256));
        page.WaitForElement("h1", Patience);
        return page;
    }

    private async Task<string> Add(string name, byte[] png) => (await Bench.Add("d", name, new MemoryStream(png), "drop", Xunit.TestContext.Current.CancellationToken)).Value.Sha256;

    // Twenty plated holes 30 × 20 mm wide, drawn by the renderer.
    private static byte[] Board(int seed, bool bottom, double turn)
    {
        var random = new Random(seed);
        var holes = new List<ScenePart>();
        while (holes.Count < 20)
        {
            var (x, y) = (1.5 + (27 * random.NextDouble()), 1.5 + (17 * random.NextDouble()));
            if (holes.Exists(hole => Math.Abs(hole.X - x) < 1.5 && Math.Abs(hole.Y - y) < 1.5)) continue;
            holes.Add(new($"H{holes.Count}", PartShape.Hole, x, y, 0.9, 0.9, 0));
        }

        var scene = new Scene
        {
            Seed = seed, BoardWidthMm = 30, BoardHeightMm = 20, Width = 1000, Height = 750, PxPerMm = 26, TiltDegrees = bottom ? 6 : 0, TurnDegrees = turn,
            Parts = [.. holes.Select(hole => hole with { X = bottom ? 30 - hole.X : hole.X })],
        };
        using var png = new MemoryStream();
        SceneRenderer.Render(scene).WritePng(png);
        return png.ToArray();
    }
}
