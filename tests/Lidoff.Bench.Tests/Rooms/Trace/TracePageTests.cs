using Bunit;
using Lidoff.Bench.Rooms.Trace;
using Lidoff.Bench.Tests.Looking;
using Lidoff.Bench.Working;
using Lidoff.Tracing.Kinds;

namespace Lidoff.Bench.Tests.Rooms.Trace;

public sealed class TracePageTests : RoomContext
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(10);

    [Fact]
    public async Task Readings_come_one_after_another_on_the_same_pair_and_can_be_taken_back()
    {
        var page = Page();
        Enter(page, "touch", "U3.13 GND beep");
        page.WaitForAssertion(() => Assert.Contains("U3.13", page.Find(".pair").TextContent, StringComparison.Ordinal), Patience);
        Enter(page, "touch", "0,3");
        page.WaitForAssertion(() => Assert.Equal(2, Stored<TouchSighting>().Count), Patience);
        Enter(page, "touch", "U3.14 open");
        page.WaitForAssertion(() => Assert.Equal(3, Stored<TouchSighting>().Count), Patience);
        var touches = Stored<TouchSighting>();
        Assert.Equal(("U3.13", "GND", 0.3), (touches[1].A.Text, touches[1].B.Text, touches[1].Ohms));
        Assert.Equal(("U3.14", "GND", true), (touches[2].A.Text, touches[2].B.Text, touches[2].Open));
        await Hand.Undo("d");
        Assert.Equal(2, Stored<TouchSighting>().Count);
    }

    [Fact]
    public void What_is_wrong_stands_beside_the_line_and_the_line_stays()
    {
        var page = Page();
        Enter(page, "touch", "U3.13 GND 1,500");
        Assert.Contains("1500?", page.WaitForElement("form:has(#touch) .fault", Patience).TextContent, StringComparison.Ordinal);
        Assert.Equal("U3.13 GND 1,500", page.Find("#touch").GetAttribute("value"));
        // The reader of lines has the last word.
        Enter(page, "touch", "GND GND beep");
        page.WaitForAssertion(() => Assert.Contains("another point than", page.Find("form:has(#touch) .fault").TextContent, StringComparison.Ordinal), Patience);
        Assert.Empty(Stored<TouchSighting>());
    }

    // A crystal is two plates in one can: touched as one point it would join both its nets, which are never one (common practice, no source).
    [Fact]
    public async Task A_part_of_several_pins_is_never_one_point_and_what_has_none_is()
    {
        Bench.Set("d", "");
        Assert.True((await Hand.Note("d", "three spots", Line.Of("spot").Set("spot", "Y1").Set("class", "crystal"), Line.Of("spot").Set("spot", "AE1").Set("class", "antenna"), Line.Of("spot").Set("spot", "K1").Set("class", "connector").Set("role", "charging contact"))).Ok);
        var page = Page();
        Enter(page, "touch", "U1.4 Y1 beep");
        page.WaitForAssertion(() => Assert.Contains("Say which was touched: Y1.1.", page.Find("form:has(#touch) .fault").TextContent, StringComparison.Ordinal), Patience);
        Assert.Equal("U1.4 Y1 beep", page.Find("#touch").GetAttribute("value"));
        On(page, "#paste", e => e.Input("U1.4;Y1;beep\nU1.5;Y1;beep"));
        On(page, "form:has(#paste)", e => e.Submit());
        page.WaitForAssertion(() => Assert.Contains("Y1.1", Assert.Single(page.FindAll("form:has(#paste) .fault")).TextContent, StringComparison.Ordinal), Patience);
        Enter(page, "touch", "U1.6 AE1 beep");
        page.WaitForAssertion(() => Assert.Equal("AE1", Assert.Single(Stored<TouchSighting>()).B.Text), Patience);
        Enter(page, "touch", "K1 GND 5.02 V");
        page.WaitForAssertion(() => Assert.Equal("K1", Stored<TouchSighting>()[^1].A.Text), Patience);
    }

    [Fact]
    public void A_paste_with_doubtful_commas_is_kept_and_asked_about_and_taken_once_settled()
    {
        var page = Page();
        const string Pasted = "U3.13;GND;1,500\nC4.1;GND;0,25";
        On(page, "#paste", e => e.Input(Pasted));
        On(page, "form:has(#paste)", e => e.Submit());
        Assert.Contains("Line 1: Is \"1,500\" 1.5", page.WaitForElement("form:has(#paste) .fault", Patience).TextContent, StringComparison.Ordinal);
        Assert.Equal(Pasted, page.Find("#paste").GetAttribute("value"));
        On(page, "form:has(#paste) select", e => e.Change("Comma"));
        On(page, "form:has(#paste)", e => e.Submit());
        page.WaitForAssertion(() => Assert.Equal([1.5, 0.25], Stored<TouchSighting>().Select(touch => touch.Ohms!.Value)), Patience);
    }

    [Fact]
    public void Pads_nets_and_rails_are_one_line_each()
    {
        var page = Page();
        Enter(page, "pad", "U3.13 VDD power_in top");
        Enter(page, "net", "VSYS: U3.13 C4.1 because the track is seen");
        Enter(page, "rail", "VSYS 3.7 V from U4 to U1 U2 net VSYS");
        // Each line stores by itself; none waits for another's.
        page.WaitForAssertion(() => Assert.Equal((1, 1, 1), (Stored<PadSighting>().Count, Stored<NetDrawn>().Count, Stored<RailDrawn>().Count)), Patience);
        Assert.Equal(new PadSighting("U3", "13", "VDD", "power_in", PadSide.Top, "", null), Assert.Single(Stored<PadSighting>()));
        Assert.Equal(new NetDrawn("VSYS", [new("U3.13"), new("C4.1")], "the track is seen"), Assert.Single(Stored<NetDrawn>()));
        Assert.Equal(new RailDrawn("VSYS", 3.7, null, "U4", ["U1", "U2"], "VSYS", "", false), Stored<RailDrawn>()[0]);
    }

    [Fact]
    public void A_connected_cell_is_said_beside_the_probes()
    {
        Bench.Set("d", "", """{"kind":"cell","connected":true}""");
        Assert.Contains("A cell is connected.", Page().Find("section:has(#touch) .doubt").TextContent, StringComparison.Ordinal);
        Bench.Set("d", "", """{"kind":"cell","connected":false}""");
        Assert.Empty(Page().FindAll("section:has(#touch) .doubt"));
    }

    [Fact]
    public void Buses_and_registers_are_listed()
    {
        Bench.Set("d", "", """{"kind":"bus","type":"i2c","address":"0x52","spot":"U3","acks":1200,"nacks":3}""", """{"kind":"identity","spot":"U2","reg":"0x9f","value":"0xef4016"}""");
        var page = Page();
        Assert.Contains("answered 1,200 times, did not 3 times", page.Markup, StringComparison.Ordinal);
        Assert.Contains("register 0x9f reads 0xef4016", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void A_net_shows_its_points_its_evidence_and_what_contradicts_it()
    {
        Bench.Set("d", "", """{"kind":"touch","a":"U1.1","b":"U2.2","beep":true}""", """{"kind":"touch","a":"U2.2","b":"U3.3","ohms":0.2}""", """{"kind":"touch","a":"U1.1","b":"U3.3","open":true}""");
        var nets = Page().Find("section:has(#net)");
        Assert.Equal(["U1.1", "U2.2", "U3.3"], nets.QuerySelectorAll(".nets .chip").Select(chip => chip.TextContent.Trim()));
        Assert.Contains("by touch", nets.TextContent, StringComparison.Ordinal);
        Assert.Contains("U2.2 to U3.3 reads 0.2 Ω", nets.TextContent, StringComparison.Ordinal);
        Assert.Contains("contradicted", nets.TextContent, StringComparison.Ordinal);
        Assert.Contains("yet they are one net", nets.QuerySelector(".quarrel")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_click_writes_a_point_into_the_touch_or_puts_a_typed_pad_in_its_place()
    {
        Bench.Set("d", "");
        var top = (await Bench.Add("d", "top.png", new MemoryStream(GreyPng.Of(200, 100)), "drop", CancellationToken.None)).Value.Sha256;
        Bench.Set("d", "", $$"""{"kind":"picture","file":"{{top}}","side":"top"}""", $$"""{"kind":"spot","spot":"U1","picture":"{{top}}","point":[100,50]}""");
        var page = Page();
        var book = page.FindComponent<BookPanel>();
        Assert.Equal($"/thumbs/{top}/1280", page.Find("svg.book image").GetAttribute("href"));
        await page.InvokeAsync(() => book.Instance.Clicked(1005, 498));
        Assert.Equal("U1 ", page.Find("#touch").GetAttribute("value"));
        On(page, "#pad", e => e.Input("U1.3 VDD"));
        await page.InvokeAsync(() => book.Instance.Clicked(500, 250));
        page.WaitForAssertion(() => Assert.Equal("U1.4", page.Find("#pad").GetAttribute("value")), Patience);
        var pad = Assert.Single(Stored<PadSighting>());
        // By hand: the picture is 100 px high and drawn 1,000 high, so 500, 250 is pixel 50, 25.
        Assert.Equal(("U1.3", "VDD", PadSide.Top, top, new Lidoff.Evidence.Pictures.PicturePoint(50, 25)), (pad.Point.Text, pad.Name, pad.Side, pad.Picture, pad.At!.Value));
        page.WaitForAssertion(() => Assert.Contains("U1.3", page.Find("svg.book").TextContent, StringComparison.Ordinal), Patience);
    }

    [Fact]
    public void Hostile_text_is_text()
    {
        Bench.Set("d", "",
            """{"kind":"touch","a":"<script>","b":"<u>\u202E","open":true}""",
            """{"kind":"net","net":"<s>","points":["<q>"],"why":"<em>"}""",
            """{"kind":"rail","rail":"<ins>","from":"<i>","to":["<del>"],"why":"<sub>"}""",
            """{"kind":"pad","pad":"<sup>","name":"\u0007"}""",
            """{"kind":"bus","type":"spi","spot":"<samp>"}""");
        var page = Page();
        Assert.Contains("&lt;samp&gt;", page.Markup, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("script, u, s, q, em, ins, i, del, sub, sup, samp"));
        Assert.DoesNotContain("\u202E", page.Markup, StringComparison.Ordinal);
        Assert.DoesNotContain("\u0007", page.Markup, StringComparison.Ordinal);
    }

    private static void Enter(IRenderedComponent<TracePage> page, string id, string text)
    {
        On(page, "#" + id, e => e.Input(text));
        On(page, $"form:has(#{id})", e => e.Submit());
    }

    private IRenderedComponent<TracePage> Page()
    {
        Bench.Set("d", "");
        var page = Render<TracePage>(p => p.Add(t => t.Name, "d"));
        page.WaitForAssertion(() => page.Find("#touch"), Patience);
        return page;
    }
}
