using Lidoff.Bench.Rooms.Trace.Book;
using Lidoff.Bench.Tests.Looking;

namespace Lidoff.Bench.Tests.Rooms.Trace;

public sealed class BookViewTests : IDisposable
{
    private readonly FakeBench bench = new();

    [Fact]
    public async Task Two_sides_are_hinged_at_their_common_edge()
    {
        var (top, bottom) = await Pictures();
        bench.Set("d", "",
            $$"""{"kind":"spot","spot":"U1","picture":"{{top}}","point":[100,50]}""",
            $$"""{"kind":"pad","spot":"U1","pad":"3","picture":"{{top}}","point":[50,25]}""",
            $$"""{"kind":"pad","pad":"TP1","picture":"{{bottom}}","point":[0,100]}""",
            """{"kind":"touch","a":"U1.3","b":"TP1","beep":true}""",
            """{"kind":"touch","a":"U1.4","b":"GND","open":true}""",
            """{"kind":"touch","a":"X1.1","b":"X1.2","ohms":3}""");
        var book = bench.View("d", dossier => BookView.Of(dossier))!;
        // By hand: the top is 200 × 100 px, so 1,000 high it is 2,000 wide; the bottom is 100 × 100 and begins there.
        Assert.Equal((2000.0, 2000.0, 3000.0), (book.Left!.Width, book.Right!.Left, book.Width));
        Assert.Equal(["TP1", "U1", "U1.3"], book.Points.Select(point => point.Name));
        var beep = book.Strings[0];
        Assert.Equal((StringKind.Beep, 500.0, 250.0, 2000.0, 1000.0, ""), (beep.Kind, beep.X1, beep.Y1, beep.X2, beep.Y2, beep.Tag));
        // A pin that was not placed lies in its part; a point that lies nowhere is a tag.
        var open = book.Strings[1];
        Assert.Equal((StringKind.Open, 1000.0, 500.0, "GND"), (open.Kind, open.X1, open.Y1, open.Tag));
        Assert.Equal(1, book.Loose);
        Assert.Equal("U1.3", book.Near(505, 252)!.Name);
        Assert.Null(book.Near(1500, 900));
        Assert.Equal((top, 50.0, 25.0), (book.Under(500, 250)!.Value.Page.Picture.Sha256, book.Under(500, 250)!.Value.X, book.Under(500, 250)!.Value.Y));
        Assert.Null(book.Under(3001, 5));
    }

    [Fact]
    public async Task Other_pictures_can_be_laid_in()
    {
        var (top, bottom) = await Pictures();
        var book = bench.View("d", dossier => BookView.Of(dossier, bottom, top))!;
        Assert.Equal((bottom, top), (book.Left!.Picture.Sha256, book.Right!.Picture.Sha256));
        var unknown = bench.View("d", dossier => BookView.Of(dossier, "../../etc", "x"))!;
        Assert.Equal(top, unknown.Left!.Picture.Sha256);
    }

    [Fact]
    public async Task Of_two_pictures_one_of_which_says_its_side_the_other_shows_the_other_side()
    {
        bench.Set("d", "");
        async Task<string> Add(string name, int width) => (await bench.Add("d", name, new MemoryStream(GreyPng.Of(width, 50)), "drop", Xunit.TestContext.Current.CancellationToken)).Value.Sha256;
        var (one, two) = (await Add("one.png", 100), await Add("two.png", 120));
        Assert.Equal((null, null), Sides());
        bench.Set("d", "", $$"""{"kind":"picture","file":"{{two}}","side":"bottom"}""");
        Assert.Equal((one, two), Sides());
        // Of several without a side nobody knows which.
        await Add("three.png", 140);
        Assert.Equal((null, two), Sides());

        (string? Left, string? Right) Sides() => bench.View("d", dossier => BookView.Of(dossier)) is { } book ? (book.Left?.Picture.Sha256, book.Right?.Picture.Sha256) : default;
    }

    // A place 150 px from the left edge of a top of 200 px shows 50 px from the left edge of the bottom: the same distance from the hinge.
    [Fact]
    public async Task Pictures_of_one_board_lie_level_and_on_each_other_as_of_glass()
    {
        await Laid();
        var open = bench.View("d", dossier => BookView.Of(dossier))!;
        Assert.Equal("Both lie on one board by H1, H2, H3, H4, within 0.0 px at each.", open.Laid);
        var (x, y) = open.Left!.At(150, 25);
        var (otherX, otherY) = open.Right!.At(50, 25);
        Assert.Equal(y, otherY, 3);
        Assert.Equal(open.Right.Left - x, otherX - open.Right.Left, 3);
        Assert.Equal((50.0, 25.0), (Math.Round(open.Under(otherX, otherY)!.Value.X, 6), Math.Round(open.Under(otherX, otherY)!.Value.Y, 6)));

        var glass = bench.View("d", dossier => BookView.Of(dossier, way: BookWay.Through))!;
        Assert.Equal((0.0, 0.0, glass.Left!.Width), (glass.Left.Left, glass.Right!.Left, glass.Width));
        var (topX, topY) = glass.Left.At(150, 25);
        Assert.Equal(topX, glass.Right.At(50, 25).X, 3);
        Assert.Equal(topY, glass.Right.At(50, 25).Y, 3);
        Assert.Equal("top", glass.Under(topX, topY)!.Value.Page.Picture.Side);
        Assert.Equal("bottom", glass.Under(topX, topY, other: true)!.Value.Page.Picture.Side);
        Assert.True(glass.Points.Single(point => point.Name == "TP1").Other);
    }

    [Fact]
    public async Task Pictures_that_share_no_board_lie_side_by_side_whatever_was_asked()
    {
        await Pictures();
        var book = bench.View("d", dossier => BookView.Of(dossier, way: BookWay.Through))!;
        Assert.Equal((BookWay.Open, "", 2000.0), (book.Way, book.Laid, book.Right!.Left));
    }

    [Fact]
    public void Without_pictures_the_book_is_empty_and_nothing_breaks()
    {
        bench.Set("d", "", """{"kind":"touch","a":"U1.3","b":"GND","beep":true}""");
        var book = bench.View("d", dossier => BookView.Of(dossier))!;
        Assert.Null(book.Left);
        Assert.Equal(1, book.Loose);
        Assert.Null(book.Under(0, 0));
    }

    public void Dispose() => bench.Dispose();

    private async Task Laid()
    {
        bench.Set("d", "");
        var top = (await bench.Add("d", "top.png", new MemoryStream(GreyPng.Of(200, 100)), "drop", CancellationToken.None)).Value.Sha256;
        var bottom = (await bench.Add("d", "bottom.png", new MemoryStream(GreyPng.Of(200, 102)), "drop", CancellationToken.None)).Value.Sha256;
        (string Name, int X, int Y)[] holes = [("H1", 20, 20), ("H2", 180, 20), ("H3", 180, 80), ("H4", 20, 80)];
        bench.Set("d", "",
            [
                $$"""{"kind":"picture","file":"{{top}}","side":"top"}""", $$"""{"kind":"picture","file":"{{bottom}}","side":"bottom"}""",
                .. holes.Select(hole => $$"""{"kind":"landmark","landmark":"{{hole.Name}}","picture":"{{top}}","point":[{{hole.X}},{{hole.Y}}]}"""),
                .. holes.Select(hole => $$"""{"kind":"landmark","landmark":"{{hole.Name}}","picture":"{{bottom}}","point":[{{200 - hole.X}},{{hole.Y}}]}"""),
                $$"""{"kind":"pad","pad":"TP1","picture":"{{bottom}}","point":[50,25]}""",
            ]);
    }

    private async Task<(string Top, string Bottom)> Pictures()
    {
        bench.Set("d", "");
        var top = (await bench.Add("d", "top.png", new MemoryStream(GreyPng.Of(200, 100)), "drop", CancellationToken.None)).Value.Sha256;
        var bottom = (await bench.Add("d", "bottom.png", new MemoryStream(GreyPng.Of(100, 100)), "drop", CancellationToken.None)).Value.Sha256;
        bench.Set("d", "", $$"""{"kind":"picture","file":"{{top}}","side":"top"}""", $$"""{"kind":"picture","file":"{{bottom}}","side":"bottom"}""");
        return (top, bottom);
    }
}
