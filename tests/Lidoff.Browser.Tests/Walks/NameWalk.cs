using Lidoff.Browser.Tests.Fixtures;
using Lidoff.Naming.Kinds;
using Lidoff.Seeing.Kinds;
using Microsoft.Playwright;

namespace Lidoff.Browser.Tests.Walks;

/// <summary>The room Name as somebody uses it who wants to know which part sits where: the list, a spot's page, a word with its reason.</summary>
public sealed class NameWalk(TheBrowser browser) : BrowserTest(browser)
{
    // U1's mark and 6 mm body are those of the QFN48 part in its maker's product specification (nRF52832); of U2 nothing is read yet, of
    // U3 only what it is there for.
    private static readonly string[] Notes =
    [
        """{"kind":"spot","spot":"U1","picture":"board.png","point":[290,190],"role":"radio"}""",
        """{"kind":"spot","spot":"U2","picture":"board.png","point":[420,190],"role":"converter of the core"}""",
        """{"kind":"spot","spot":"U3","picture":"board.png","point":[100,90],"role":"chip beside the coil"}""",
        """{"kind":"mark","spot":"U1","lines":["N52832","QFAA?0"]}""",
        """{"kind":"body","spot":"U1","mm":[6.01,6.00],"u_mm":0.02}""",
        // Three siblings fit the mark of U4; the nRF52820 comes in 5 mm only (its maker's product specification, QFN40).
        """{"kind":"mark","spot":"U4","lines":["N528?0"]}""",
        """{"kind":"body","spot":"U4","mm":[6.01,6.00],"u_mm":0.02}""",
        """{"kind":"pins","spot":"U4","count":48}""",
    ];

    [Fact]
    public async Task The_list_stands_by_how_settled_and_leads_on_by_keys()
    {
        var (_, window) = await Begin("");
        var settled = window.Page.GetByRole(AriaRole.Group, new() { Name = "How settled" });
        await Assertions.Expect(settled.GetByRole(AriaRole.Button, new() { Name = "part 1" })).ToBeVisibleAsync();
        await Assertions.Expect(settled.GetByRole(AriaRole.Button, new() { Name = "open 2" })).ToBeVisibleAsync();
        await settled.GetByRole(AriaRole.Button, new() { Name = "part 1" }).ClickAsync();
        var rows = window.Page.Locator("table.parts tbody tr");
        await Assertions.Expect(rows).ToHaveCountAsync(1);
        await Assertions.Expect(rows).ToContainTextAsync(["nRF52832"]);
        await settled.GetByRole(AriaRole.Button, new() { Name = "part 1" }).ClickAsync();
        await Assertions.Expect(rows).ToHaveCountAsync(4);

        await window.Page.Keyboard.PressAsync("j");
        await window.Page.Keyboard.PressAsync("j");
        await Assertions.Expect(window.Page.Locator("table.parts tr.on th")).ToContainTextAsync("U2");
        await window.Page.Keyboard.PressAsync("k");
        await Assertions.Expect(window.Page.Locator("table.parts tr.on th")).ToContainTextAsync("U1");
        await window.Page.Keyboard.PressAsync("o");
        await window.Arrives("/dossiers/band/name/U1");

        // Its page: where it sits, what was measured, who may sit there, and what speaks for and against, in decibans.
        await Assertions.Expect(window.Page.GetByRole(AriaRole.Img, new() { Name = "Where U1 sits" })).ToBeVisibleAsync();
        await Assertions.Expect(window.Page.GetByRole(AriaRole.Region, new() { Name = "Measurements" })).ToContainTextAsync("6.01");
        await Assertions.Expect(window.Page.GetByRole(AriaRole.Region, new() { Name = "Table of candidates" }).Locator("tbody tr").First).ToContainTextAsync("nRF52832");
        var decibans = window.Page.GetByRole(AriaRole.Region, new() { Name = "Table of decibans" });
        await Assertions.Expect(decibans.Locator("thead")).ToContainTextAsync("nRF52832");
        // The mark speaks for it by more than ten to one.
        Assert.True(await decibans.Locator("tr", new() { Has = window.Page.Locator("th", new() { HasTextString = "mark" }) }).Locator("td.n").First.InnerTextAsync() is { } said
            && double.Parse(said.Trim().Replace('−', '-'), System.Globalization.CultureInfo.InvariantCulture) > 10);
        await window.Go("/dossiers/band/name/U4");
        await Assertions.Expect(window.Page.Locator("section:has(#rivals-head) li", new() { HasTextString = "nRF52820" })).ToContainTextAsync("by body");
        await window.Go("/dossiers/band/name/U1");
        await window.Page.Keyboard.PressAsync("j");
        await window.Arrives("/dossiers/band/name/U2");
        await window.Page.Keyboard.PressAsync("u");
        await window.Arrives("/dossiers/band/name");
    }

    [Fact]
    public async Task A_candidate_is_accepted_rejected_and_in_no_list_each_with_a_reason_and_all_of_it_taken_back()
    {
        var (bench, window) = await Begin("/U1");
        await Settle(window, "a", "marks compared with a bought one");
        await Decided(bench, Verdict.Accept, "nRF52832");
        await Assertions.Expect(Settled(window)).ToContainTextAsync("U1 is nRF52832 because marks compared with a bought one");
        await window.Page.Locator("h1").ClickAsync();
        await window.Page.Keyboard.PressAsync("Control+z");
        await Assertions.Expect(Settled(window)).Not.ToContainTextAsync("U1 is nRF52832 because");
        await bench.Stored("band", "the acceptance taken back", session => !session.View.Live<IdentityDecision>().Any());

        await Settle(window, "r", "its pins are one too few");
        await Decided(bench, Verdict.Reject, "nRF52832");
        await Settled(window).GetByRole(AriaRole.Button, new() { Name = "Take back: U1 is not nRF52832" }).ClickAsync();
        await bench.Stored("band", "the rejection taken back", session => !session.View.Live<IdentityDecision>().Any());

        // Without a reason nothing is stored, and the sentence stands beside the field.
        await window.Page.Keyboard.PressAsync("n");
        await Assertions.Expect(window.Page.Locator("#why")).ToBeFocusedAsync();
        await window.Page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(Settled(window).Locator(".fault")).ToBeVisibleAsync();
        await window.Page.Keyboard.TypeAsync("a house number, says the brand");
        await window.Page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(Settled(window)).ToContainTextAsync("U1 is in no list because a house number, says the brand");
        await Decided(bench, Verdict.NotListed, "");
    }

    [Fact]
    public async Task A_reason_half_written_is_there_again_after_a_reload_with_its_form_open_and_gone_once_stored()
    {
        var (bench, window) = await Begin("/U1");
        await window.Page.Keyboard.PressAsync("a");
        await Assertions.Expect(window.Page.Locator("#why")).ToBeFocusedAsync();
        await window.Page.Keyboard.TypeAsync("marks compared with");
        await window.Go("/dossiers/band/name/U1");
        await Assertions.Expect(window.Page.Locator("#why")).ToHaveValueAsync("marks compared with");
        await Assertions.Expect(window.Page.Locator("label[for=why]")).ToContainTextAsync("U1 is nRF52832, because");
        await window.Page.Locator("#why").PressSequentiallyAsync(" a bought one");
        await window.Page.PressAsync("#why", "Enter");
        await Decided(bench, Verdict.Accept, "nRF52832");
        await window.Go("/dossiers/band/name/U1");
        await Assertions.Expect(Settled(window)).ToContainTextAsync("because");
        await Assertions.Expect(window.Page.Locator("#why")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task A_spots_page_needs_no_sideways_scrolling_on_a_narrow_window()
    {
        var (bench, _) = await Begin("");
        // A mark with a place left open.
        await LiveBench.Command(bench.Folder, """{"kind":"mark","spot":"U5","lines":["N52832",[[["Q",0.95]],[["F",0.95]],[["A",0.95]],[["A",0.95]],[["E",0.475],["B",0.475]],[["0",0.95]]]]}""", "note", "band", "-");
        var window = await Open(bench, Look.Narrow);
        foreach (var spot in new[] { "U5", "U1", "U2" })
        {
            await window.Go("/dossiers/band/name/" + spot);
            await Assertions.Expect(window.Page.Locator("#cand-head")).ToBeVisibleAsync();
            Assert.Equal(390, await window.Page.EvaluateAsync<int>("document.documentElement.scrollWidth"));
            // An order code of 24 characters among the candidates is for its table to scroll, not for the page.
            if (spot == "U5") await window.Page.EvaluateAsync("document.querySelector('[aria-label=\"Table of candidates\"] tbody tr:nth-child(2) bdi').firstChild.data = 'MB85RC64TAPNF-G-BDERE1ABC'");
            Assert.Equal(390, await window.Page.EvaluateAsync<int>("document.documentElement.scrollWidth"));
            await window.Page.Locator("[data-key=f]").Last.ClickAsync();
            await Assertions.Expect(window.Page.Locator("#why")).ToBeVisibleAsync();
            Assert.Equal(390, await window.Page.EvaluateAsync<int>("document.documentElement.scrollWidth"));
        }

        // The list of keys begins at its top, and what a key does has half of its width at least.
        await window.Page.Locator("[data-keys]").ClickAsync();
        await Assertions.Expect(window.Page.Locator("#keys h2")).ToBeInViewportAsync();
        Assert.InRange(await window.Page.EvaluateAsync<double>("document.querySelector('#keys dd').clientWidth / document.querySelector('#keys dl').clientWidth"), 0.5, 1);
    }

    [Fact]
    public async Task A_family_is_accepted_where_the_member_is_open()
    {
        var (bench, window) = await Begin("/U2");
        await window.Page.Keyboard.PressAsync("f");
        await Assertions.Expect(window.Page.Locator("#family")).ToBeFocusedAsync();
        await window.Page.Keyboard.TypeAsync("TPS6274x");
        await window.Page.Keyboard.PressAsync("Tab");
        await Assertions.Expect(window.Page.Locator("#why")).ToBeFocusedAsync();
        await window.Page.Keyboard.TypeAsync("coil and pads as in the maker's layout");
        await window.Page.Keyboard.PressAsync("Enter");
        await Decided(bench, Verdict.Family, "TPS6274x");
        await Assertions.Expect(window.Page.Locator("main.work")).ToContainTextAsync("Settled to the family only. family TPS6274x");
        await window.Page.Keyboard.PressAsync("u");
        await window.Arrives("/dossiers/band/name");
        await Assertions.Expect(window.Page.Locator("table.parts tr", new() { HasTextString = "U2" })).ToContainTextAsync("family TPS6274x");
        await window.Page.Keyboard.PressAsync("Control+z");
        await Assertions.Expect(window.Page.Locator("table.parts tr", new() { HasTextString = "U2" })).Not.ToContainTextAsync("family TPS6274x");
        await bench.Stored("band", "the family taken back", session => !session.View.Live<IdentityDecision>().Any());
    }

    [Fact]
    public async Task A_worn_mark_typed_by_keyboard_alone_names_the_part()
    {
        var (bench, window) = await Begin("/U3");
        await Assertions.Expect(window.Page.Locator("#cand-head + p")).ToBeVisibleAsync();
        await window.Page.Keyboard.PressAsync("m");
        await Assertions.Expect(window.Page.Locator("[data-grid] input:focus")).ToHaveAttributeAsync("aria-label", "position 1: free");
        // The 5 that may be an S is gone back to; the last place cannot be read.
        await window.Page.Keyboard.TypeAsync("N5283?/QFAA");
        for (var i = 0; i < 10; i++) await window.Page.Keyboard.PressAsync("ArrowLeft");
        await Assertions.Expect(window.Page.Locator("[data-grid] input:focus")).ToHaveAttributeAsync("aria-label", "line 1, position 2: 5");
        await window.Page.Keyboard.PressAsync("ArrowDown");
        await Assertions.Expect(window.Page.Locator("[data-grid] input:focus")).ToHaveAttributeAsync("aria-label", "line 1, position 2: 5 or S");
        await window.Page.Keyboard.PressAsync("Enter");
        await bench.Stored("band", "the mark of U3", session => session.View.Live<MarkSighting>().Any(mark => mark.Value.Spot == "U3"));
        await Assertions.Expect(window.Page.GetByRole(AriaRole.Region, new() { Name = "Table of candidates" })).ToContainTextAsync("nRF52832");
        var mark = bench.Stored("band", session => session.View.Live<MarkSighting>().Single(each => each.Value.Spot == "U3").Value);
        Assert.Equal(["5", "S"], mark.Lines[0].Places[1].Top.Select(glyph => glyph.Character));
        Assert.Equal("QFAA", mark.Lines[1].Text);
    }

    private async Task<(LiveBench Bench, Window Window)> Begin(string page)
    {
        var bench = await Bench("band");
        var picture = Folder["board.png"];
        await File.WriteAllBytesAsync(picture, Files.Board, TestContext.Current.CancellationToken);
        await LiveBench.Command(bench.Folder, "", "add", "band", picture);
        await LiveBench.Command(bench.Folder, string.Join('\n', Notes), "note", "band", "-");
        var window = await Open(bench);
        await window.Go("/dossiers/band/name" + page);
        return (bench, window);
    }

    private static async Task Settle(Window window, string key, string why)
    {
        await window.Page.Keyboard.PressAsync(key);
        await Assertions.Expect(window.Page.Locator("#why")).ToBeFocusedAsync();
        await window.Page.Keyboard.TypeAsync(why);
        await window.Page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(window.Page.Locator("#why")).ToHaveCountAsync(0);
    }

    private static ILocator Settled(Window window) => window.Page.Locator("section:has(#decide-head)");

    private static Task Decided(LiveBench bench, Verdict verdict, string part) => bench.Stored("band", verdict + " " + part, session =>
        session.View.Live<IdentityDecision>() is [{ Value: { } value }] && value.Verdict == verdict && value.Part == part);
}
