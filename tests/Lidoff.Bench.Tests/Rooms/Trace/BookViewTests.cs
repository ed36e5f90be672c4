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
    public void Without_pictures_the_book_is_empty_and_nothing_breaks()
    {
        bench.Set("d", "", """{"kind":"touch","a":"U1.3","b":"GND","beep":true}""");
        var book = bench.View("d", dossier => BookView.Of(dossier))!;
        Assert.Null(book.Left);
        Assert.Equal(1, book.Loose);
        Assert.Null(book.Under(0, 0));
    }

    public void Dispose() => bench.Dispose();

    private async Task<(string Top, string Bottom)> Pictures()
    {
        bench.Set("d", "");
        var top = (await bench.Add("d", "top.png", new MemoryStream(GreyPng.Of(200, 100)), "drop", CancellationToken.None)).Value.Sha256;
        var bottom = (await bench.Add("d", "bottom.png", new MemoryStream(GreyPng.Of(100, 100)), "drop", CancellationToken.None)).Value.Sha256;
        bench.Set("d", "", $$"""{"kind":"picture","file":"{{top}}","side":"top"}""", $$"""{"kind":"picture","file":"{{bottom}}","side":"bottom"}""");
        return (top, bottom);
    }
}
