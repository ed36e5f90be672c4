using Bunit;
using Lidoff.Bench.Components.Parts.Reading;
using Lidoff.Bench.Rooms.Name;
using Lidoff.Bench.Rooms.Name.Spots;
using Lidoff.Bench.Rooms.See.Reading;
using Lidoff.Bench.Rooms.See.Viewing;
using Lidoff.Bench.Tests.Looking;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Reading.Networks;
using Lidoff.TestSupport;

namespace Lidoff.Bench.Tests.Components.Parts;

/// <summary>A mark read on a rendered board by the networks that come with the program, and a reading noted by hand whose numbers are plain.</summary>
public sealed class MarkReadingsTests : RoomContext
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    // A body of 100 × 40 px with its middle at (200, 100), whose mark stands on its head: text runs to the left. Two lines of 60 × 10 px.
    private const string Turned = """
        {"kind":"reading","spot":"U9","pictures":["PICTURE"],"region":[200,100,100,40,0],"turn_deg":180,"lines":[[[["8",0.6],["B",0.38]],[["2",0.99]]],[[["0",0.97],["O",0.03]]]],
        "readings":[[["82",0.6],["B2",0.38],["832",0.01],["8",0.004],["2",0.003],["B",0.002]],[["0",0.97],["O",0.03]]],"outlines":[[230,115],[170,115],[170,105],[230,105],[230,95],[170,95],[170,85],[230,85]],"in_picture":[0,0],
        "otherwise":["Z8"],"dot":[240,110],"emblems":[[160,90],[168,90],[168,98],[160,98]],"emblems_p":[0.9],"networks":["aa","bb"],"settings":"s","program":"p","says":["Which way up is not clear."]}
        """;

    [Fact]
    public async Task A_key_has_the_mark_read_and_another_takes_it_over_beside_the_machines()
    {
        var page = await Read("U1");
        var mark = RenderedBoards.Mark("U1");
        Assert.Equal(mark, page.FindAll(".readline .wholes label:first-child bdi").Select(each => each.TextContent));
        Assert.Equal(3, page.FindAll("svg.upright polygon.over").Count);
        Assert.StartsWith("/crops/", page.Find("svg.upright image").GetAttribute("href"), StringComparison.Ordinal);
        Assert.Contains("It names the spot as long as no person reads the mark.", page.Find(".reading").TextContent, StringComparison.Ordinal);
        // The candidates follow at once: the mark is that of the nRF52832 (its maker's product specification).
        page.WaitForAssertion(() => Assert.Contains("nRF52832", page.Find("tr:has(input[name=candidate])").TextContent, StringComparison.Ordinal), Patience);
        On(page, "[data-key=t]", e => e.Click());
        page.WaitForAssertion(() => Assert.Equal(mark, Assert.Single(Stored<MarkSighting>()).Lines.Select(line => line.Text)), Patience);
        page.WaitForAssertion(() => Assert.Contains("A person's reading counts; this one stands beside it.", page.Find(".reading").TextContent, StringComparison.Ordinal), Patience);
        Assert.Single(Stored<ReadingSighting>());
        await Hand.Undo("d");
        Assert.Empty(Stored<MarkSighting>());
    }

    [Fact]
    public async Task The_body_is_shown_upright_with_its_lines_and_another_reading_can_be_chosen()
    {
        var sha256 = await RenderedBoards.Add(Bench);
        Bench.Set("d", "", Turned.ReplaceLineEndings(" ").Replace("PICTURE", sha256, StringComparison.Ordinal));
        var row = Assert.Single(Bench.View("d", dossier => SpotView.Of(dossier, "U9"))!.Readings);
        var crop = Assert.Single(row.Crops);
        // On its head: what lies at the right foot of the picture lies at the left top of the piece.
        Assert.Equal((100.0, 40.0, 200.0, 100.0), (Math.Round(crop.Region.Width, 6), Math.Round(crop.Region.Height, 6), Math.Round(crop.Region.Middle.X, 6), Math.Round(crop.Region.Middle.Y, 6)));
        Assert.Equal("20,5 80,5 80,15 20,15", ReadingCrop.Points(crop.Lines[0].Corners));
        Assert.Equal((10.0, 10.0), (Math.Round(crop.Dot!.Value.X, 6), Math.Round(crop.Dot.Value.Y, 6)));
        var page = Render<SpotPage>(parameters => parameters.Add(p => p.Name, "d").Add(p => p.Spot, "U9"));
        page.WaitForElement("svg.upright circle", Patience);
        var text = string.Join(' ', page.Find(".reading").TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        foreach (var said in new[] { "All of it right: P 0.58.", "It is read after turning the picture by 180° clockwise.", "The other way up: Z8", "Which way up is not clear.", "The pin-1 dot lies at the upper left of the upright mark", "no text; kept as it looks" }) Assert.Contains(said, text, StringComparison.Ordinal);
        // A mark that is no text is cut out as it looks, a tenth of it around it.
        Assert.EndsWith("/164,94,9.6,9.6,-3.1416", page.Find(".emblems img").GetAttribute("src"), StringComparison.Ordinal);
        // Five readings of a line at most, the likeliest first, each with its odds.
        var wholes = page.FindAll(".readline")[0].QuerySelectorAll("label").Select(each => each.TextContent.Trim()).ToList();
        Assert.Equal(["82 0.60", "B2 0.38", "832 0.01", "8 < 0.01", "2 < 0.01"], wholes);
        Assert.Equal("8|B2/0", page.Find("[data-key=c]").GetAttribute("data-insert"));
        Assert.Equal("mark-U9", page.Find("[data-key=c]").GetAttribute("data-into"));
        Assert.NotNull(page.Find("#mark-U9"));
        Act(page, () => page.FindAll(".readline")[0].QuerySelectorAll("input[type=radio]")[1].Change("on"));
        On(page, "[data-key=t]", e => e.Click());
        page.WaitForAssertion(() => Assert.Equal("B2/0", Assert.Single(Stored<MarkSighting>()).Text), Patience);
        // In the room See its lines lie over the picture while it is selected.
        var over = StageOverlay.Of(Bench.View("d", dossier => PictureView.Of(dossier, sha256))!, "U9");
        Assert.Equal(8, over.Lines.Count(line => line.Sort == "read"));
        Assert.Equal((230.0, 115.0, 170.0, 115.0), over.Lines.First(line => line.Sort == "read") is var first ? (first.X1, first.Y1, first.X2, first.Y2) : default);
        Assert.Empty(StageOverlay.Of(Bench.View("d", dossier => PictureView.Of(dossier, sha256))!, "U1").Lines);
    }

    [Fact]
    public async Task A_picture_in_which_a_spot_was_only_outlined_shows_it_with_its_own_lines()
    {
        var sha256 = await RenderedBoards.Add(Bench);
        var close = await RenderedBoards.Add(Bench, "brindle-u1.png");
        // Corners from (20, 30) to (80, 70) in the close one; the same line lies there too.
        Bench.Set("d", "", $$"""{"kind":"spot","spot":"U9","role":"radio","class":"chip","picture":"{{sha256}}","point":[200,100]}""",
            $$"""{"kind":"length","spot":"U9","what":"long side","picture":"{{close}}","from":[20,70],"to":[80,70]}""", $$"""{"kind":"length","spot":"U9","what":"short side","picture":"{{close}}","from":[80,70],"to":[80,30]}""",
            Turned.ReplaceLineEndings(" ").Replace("\"PICTURE\"", $"\"{sha256}\",\"{close}\"", StringComparison.Ordinal).Replace("\"in_picture\"", "\"also\":[[[1,30,40,70,40,70,48,30,48]],[]],\"in_picture\"", StringComparison.Ordinal));
        var view = Bench.View("d", dossier => PictureView.Of(dossier, close))!;
        Assert.Empty(view.Spots);
        Assert.Equal(("U9", "radio", 50.0, 50.0), Assert.Single(view.Seen) is var seen ? (seen.Value.Spot, seen.Value.Role, seen.At.X, seen.At.Y) : default);
        var over = StageOverlay.Of(view, "U9");
        Assert.Equal("U9", Assert.Single(over.Spots).Name);
        Assert.Equal([(30.0, 40.0), (70.0, 40.0), (70.0, 48.0), (30.0, 48.0)], over.Lines.Where(line => line.Sort == "read").Select(line => (line.X1, line.Y1)));
        // Both pieces are shown, the second by its own line.
        Assert.Equal([2, 1], Assert.Single(Bench.View("d", dossier => SpotView.Of(dossier, "U9"))!.Readings).Crops.Select(crop => crop.Lines.Count));
        Assert.Empty(Bench.View("d", dossier => PictureView.Of(dossier, sha256))!.Outlined);
        var page = Render<Lidoff.Bench.Rooms.See.PicturePage>(parameters => parameters.Add(p => p.Name, "d").Add(p => p.Sha256, close));
        page.WaitForElement(".pointed .pick", Patience);
        On(page, ".pointed .pick", e => e.Click());
        page.WaitForAssertion(() => Assert.Contains("Its body was outlined here", page.Find(".pointed .on").TextContent, StringComparison.Ordinal), Patience);
        Assert.Equal(2, page.FindAll(".pointed svg.upright").Count);
    }

    // Yellow violet red gold is 4.7 kΩ ± 5 %: a worked example of a public chart of IEC 60062.
    [Fact]
    public void Colour_bands_are_shown_with_their_values_and_taken_over_as_a_mark()
    {
        const string Banded = """{"kind":"reading","spot":"R3","pictures":["cc"],"region":[50,40,100,30,0],"turn_deg":0,"lines":[],"readings":[],"bands":[[["yellow",0.95],["gold",0.05]],[["violet",1]],[["red",1]],[["gold",1]]],"bands_begin":2,"networks":["aa"],"settings":"s","program":"p","says":["No text was read; colour bands were seen: yellow violet red gold."]}""";
        Bench.Set("d", "", """{"kind":"spot","spot":"R3","class":"resistor"}""", Banded);
        IEnumerable<string> Values() => Bench.View("d", dossier => SpotView.Of(dossier, "R3"))!.Measured.Where(row => row.What.Contains("value code", StringComparison.Ordinal)).Select(row => $"{row.What}: {row.Value}");
        Assert.Equal("“yellow violet red gold” as a value code: 4.7 kΩ ± 5 % (4 bands, IEC 60062)", Values().First());
        var page = Page("R3");
        page.WaitForAssertion(() => Assert.Contains("4.7 kΩ ± 5 % (4 bands, IEC 60062)", page.Find(".reading .values li").TextContent, StringComparison.Ordinal), Patience);
        On(page, "[data-key=t]", e => e.Click());
        page.WaitForAssertion(() => Assert.Equal("yellow violet red gold", Assert.Single(Stored<MarkSighting>()).Text), Patience);
        Assert.Equal("“yellow violet red gold” as a value code: 4.7 kΩ ± 5 % (4 bands, IEC 60062)", Values().First());
    }

    [Fact]
    public async Task Parts_of_a_board_are_proposals_until_a_person_takes_them()
    {
        var sha256 = await RenderedBoards.Add(Bench);
        Bench.Set("d", "", RenderedBoards.Spot("U2"));
        var page = Render<Lidoff.Bench.Rooms.See.PicturePage>(parameters => parameters.Add(p => p.Name, "d").Add(p => p.Sha256, sha256));
        page.WaitForElement("[data-key='alt+p']", Patience);
        On(page, "[data-key='alt+p']", e => e.Click());
        page.WaitForElement(".parts-found .parts", TimeSpan.FromSeconds(60));
        // Nothing is stored of itself; what was pointed at has its name already.
        Assert.Empty(Stored<ReadingSighting>());
        Assert.Single(Stored<SpotSighting>());
        var mark = RenderedBoards.Mark("U1");
        AngleSharp.Dom.IElement Row(string text) => page.FindAll(".parts li").Single(row => row.TextContent.Contains(text, StringComparison.Ordinal));
        Assert.Equal("U2", Row(RenderedBoards.Mark("U2")[0]).QuerySelector("button")!.TextContent);
        Act(page, () => Row(mark[0]).QuerySelector("button")!.Click());
        page.WaitForAssertion(() => Assert.Equal(mark, Assert.Single(Stored<ReadingSighting>()).Lines.Select(line => line.Readings[0].Text)), Patience);
        var taken = Stored<SpotSighting>()[^1];
        Assert.Equal(("U1", sha256), (taken.Spot, taken.Picture));
        // The box lies around the body as it was drawn.
        var part = RenderedBoards.Part("U1");
        Assert.InRange(taken.Box!.Value.Middle.DistanceTo(part.Centre), 0, 8);
        page.WaitForAssertion(() => Assert.Equal("U1", Row(mark[0]).QuerySelector("button")!.TextContent), Patience);
        // All that are left on bodies, in one act.
        var (left, before) = (page.FindAll(".parts-found .parts")[0].QuerySelectorAll("button.act").Length, Stored<SpotSighting>().Count);
        On(page, ".parts-found [data-key='alt+t']", e => e.Click());
        page.WaitForAssertion(() => Assert.Equal(before + left, Stored<SpotSighting>().Count), Patience);
        Assert.Equal(1 + left, Stored<ReadingSighting>().Count);
        await Hand.Undo("d");
        Assert.Equal(before, Stored<SpotSighting>().Count);
    }

    [Fact]
    public async Task Where_nothing_can_be_read_a_sentence_says_why_and_nothing_is_stored()
    {
        await RenderedBoards.Add(Bench);
        Bench.Set("d", "", RenderedBoards.Spot("R1", kind: "resistor"), RenderedBoards.Spot("U1"));
        var page = Page("R1");
        On(page, "[data-key=i]", e => e.Click());
        page.WaitForAssertion(() => Assert.Contains("No body was found in “brindle-main-top.png” where R1 was pointed at, nor text under that place.", page.Find(".reading .doubt").TextContent, StringComparison.Ordinal), Patience);
        Assert.Empty(Stored<ReadingSighting>());
        // The way to what would help.
        Assert.EndsWith("?tool=box", page.Find(".reading [data-key='alt+b']").GetAttribute("href"), StringComparison.Ordinal);
        Assert.EndsWith("?tool=body", page.Find(".reading [data-key=b]").GetAttribute("href"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Networks_that_are_altered_are_said_on_the_page()
    {
        using var folder = new TempFolder();
        foreach (var file in Directory.EnumerateFiles(OnnxNetworks.FolderOf(AppContext.BaseDirectory))) File.Copy(file, folder[Path.GetFileName(file)]);
        File.AppendAllText(folder["reader.onnx"], "x");
        Networks = () => new OnnxNetworks(folder.Path);
        await RenderedBoards.Add(Bench);
        Bench.Set("d", "", RenderedBoards.Spot("U1"));
        var page = Page("U1");
        On(page, "[data-key=i]", e => e.Click());
        page.WaitForAssertion(() => Assert.Contains("reader.onnx was altered or not copied whole", Assert.Single(page.FindAll(".reading .doubt")).TextContent, StringComparison.Ordinal), Patience);
        // Typing goes on as ever.
        On(page, "#mark-U1", e => e.Input("N52832"));
        On(page, "form:has(#mark-U1)", e => e.Submit());
        page.WaitForAssertion(() => Assert.Equal("N52832", Assert.Single(Stored<MarkSighting>()).Text), Patience);
    }

    [Fact]
    public async Task Hostile_text_in_a_reading_stays_text()
    {
        const string Hostile = "<img src=x onerror=alert(1)>\\u202E";
        var sha256 = await RenderedBoards.Add(Bench);
        Bench.Set("d", "", Turned.ReplaceLineEndings(" ").Replace("PICTURE", sha256, StringComparison.Ordinal).Replace("\"82\"", $"\"{Hostile}\"", StringComparison.Ordinal).Replace("Z8", Hostile, StringComparison.Ordinal).Replace("Which way", Hostile, StringComparison.Ordinal)
            .Replace("[[\"8\",0.6]", "[[\"<\",0.6]", StringComparison.Ordinal));
        var page = Page("U9");
        Assert.Empty(page.FindAll("img[src=x]"));
        Assert.Contains("<img src=x onerror=alert(1)>⟨U+202E⟩", page.Find(".readline bdi.mark").ParentElement!.ParentElement!.ParentElement!.TextContent + page.Find(".wholes").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("\u202E", page.Find(".wholes").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task All_marks_are_read_from_the_list()
    {
        await RenderedBoards.Add(Bench);
        Bench.Set("d", "", RenderedBoards.Spot("U1"), RenderedBoards.Spot("U2"), RenderedBoards.Spot("R1", kind: "resistor"), """{"kind":"mark","spot":"U2","lines":["25Q32"]}""");
        var page = Render<NamePage>(parameters => parameters.Add(p => p.Name, "d"));
        page.WaitForElement(".read-all [data-key=i]", Patience);
        On(page, ".read-all [data-key=i]", e => e.Click());
        page.WaitForAssertion(() => Assert.Contains("1 mark read; 1 passed over that a person has read.", page.Find(".read-all").TextContent, StringComparison.Ordinal), Patience);
        Assert.Contains("1 spot could not be read: R1", page.Find(".read-all summary").TextContent, StringComparison.Ordinal);
        Assert.Equal("/dossiers/d/name/R1", page.Find(".read-all li a").GetAttribute("href"));
        page.WaitForAssertion(() => Assert.Contains("read by the machine", page.Find("tbody").TextContent, StringComparison.Ordinal), Patience);
        On(page, ".read-all input[type=checkbox]", e => e.Change(true));
        On(page, ".read-all [data-key=i]", e => e.Click());
        page.WaitForAssertion(() => Assert.Contains("1 mark read; 1 passed over that these networks have read before; 1 passed over that could not be read before, where nothing has changed since", page.Find(".read-all").TextContent, StringComparison.Ordinal), Patience);
    }

    [Fact]
    public async Task In_the_room_See_the_selected_spots_mark_is_read_where_it_lies()
    {
        await RenderedBoards.Add(Bench);
        Bench.Set("d", "", RenderedBoards.Spot("U2"));
        var panel = Render<ReadPanel>(parameters => parameters.Add(p => p.Dossier, "d").Add(p => p.Spot, "U2"));
        panel.WaitForElement("[data-key=i]", Patience);
        On(panel, "[data-key=i]", e => e.Click());
        panel.WaitForAssertion(() => Assert.Equal(RenderedBoards.Mark("U2"), panel.FindAll(".readline .wholes label:first-child bdi").Select(each => each.TextContent)), Patience);
    }

    private IRenderedComponent<SpotPage> Page(string spot)
    {
        var page = Render<SpotPage>(parameters => parameters.Add(p => p.Name, "d").Add(p => p.Spot, spot));
        page.WaitForElement(".reading", Patience);
        return page;
    }

    private async Task<IRenderedComponent<SpotPage>> Read(string spot)
    {
        await RenderedBoards.Add(Bench);
        Bench.Set("d", "", RenderedBoards.Spot(spot));
        var page = Page(spot);
        Assert.Contains("Nobody has had it read by the machine yet.", page.Find(".reading").TextContent, StringComparison.Ordinal);
        On(page, "[data-key=i]", e => e.Click());
        page.WaitForElement(".read", Patience);
        return page;
    }
}
