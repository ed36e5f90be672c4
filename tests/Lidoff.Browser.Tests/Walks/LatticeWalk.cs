using Lidoff.Bench.Rooms.See.Typed;
using Lidoff.Browser.Tests.Fixtures;
using Lidoff.Seeing.Kinds;
using Microsoft.Playwright;

namespace Lidoff.Browser.Tests.Walks;

/// <summary>A mark place by place, as somebody reads it off a worn body: by keyboard, by touch, and in step with its line of text.</summary>
public sealed class LatticeWalk(TheBrowser browser) : BrowserTest(browser)
{
    [Fact]
    public async Task A_worn_mark_is_read_place_by_place_by_keyboard_alone()
    {
        var bench = await Bench("band");
        var window = await Spot(bench);
        var keys = window.Page.Keyboard;
        await keys.PressAsync("m");
        await Says(window, "position 1: free");
        await keys.TypeAsync("NS2B32");
        await Says(window, "position 7: free");
        // Back to the second: S, and now that it is looked at again, a 5, which is the likelier.
        for (var i = 0; i < 5; i++) await keys.PressAsync("ArrowLeft");
        await Says(window, "position 2: S");
        await keys.PressAsync("5");
        await Says(window, "position 2: S or 5");
        await keys.PressAsync("ArrowUp");
        await Says(window, "position 2: 5 or S");
        // B and what it is usually taken for.
        await keys.PressAsync("ArrowRight");
        await keys.PressAsync("ArrowRight");
        await keys.PressAsync("ArrowDown");
        await Says(window, "position 4: B or 8");
        await keys.PressAsync("End");
        await keys.TypeAsync("/QF?1_");
        await Says(window, "line 2, position 6: free");
        await keys.PressAsync("ArrowLeft");
        await keys.PressAsync("ArrowLeft");
        await keys.PressAsync("_");
        await Says(window, "line 2, position 4: 1 or nothing");
        await Line(window, "N5|S2B|832/QF?1|_?|_");
        // A key too many, taken back in the mark and not in the dossier.
        await keys.PressAsync("7");
        await Line(window, "N5|S2B|832/QF?1|_|7?|_");
        await keys.PressAsync("Control+z");
        await Line(window, "N5|S2B|832/QF?1|_?|_");
        await keys.PressAsync("End");
        await keys.PressAsync("Backspace");
        await Line(window, "N5|S2B|832/QF?1|_");
        // Every key of it stands in the list of keys.
        await keys.PressAsync("Escape");
        await keys.PressAsync("?");
        var list = window.Page.Locator("dialog#keys");
        foreach (var key in new[] { "the place before, the next one", "usually taken for", "the next alternative comes first", "cannot be read", "maybe nothing", "begin a line", "left out", "last alternative", "note it" }) await Assertions.Expect(list).ToContainTextAsync(key);
        await keys.PressAsync("Escape");

        await keys.PressAsync("m");
        await keys.PressAsync("Enter");
        await bench.Stored("band", "the mark", session => session.View.Live<MarkSighting>().Count == 1);
        var mark = bench.Stored("band", session => session.View.Live<MarkSighting>().Single().Value);
        Assert.Equal(["5", "S"], mark.Lines[0].Places[1].Top.Select(glyph => glyph.Character));
        Assert.Equal(["B", "8"], mark.Lines[0].Places[3].Top.Select(glyph => glyph.Character));
        Assert.Equal(["1", ""], mark.Lines[1].Places[3].Top.Select(glyph => glyph.Character));
        // Noted, so the places are free for the next one, and the keys are still there.
        await Line(window, "");
        await Says(window, "position 1: free");
    }

    [Fact]
    public async Task Places_and_line_are_always_in_step_and_read_alike_on_both_ends()
    {
        var bench = await Bench("band");
        var window = await Spot(bench);
        foreach (var text in new[] { "N52832/QFAA?0", "N5|S2", "8|B|6?", "A||B", "A__B", "8|_2_", "?|_1", "MAX*/?", "A//B", "µ1|ÄÖ", "N5 832", "/A/", "1|1|2" })
        {
            await window.Page.FillAsync("[id^=mark-]:is(input)", text);
            var drawn = await window.Page.EvaluateAsync<string[][]>(
                "[...document.querySelectorAll('[data-grid] .cells')].map(row => [...row.querySelectorAll('.cell:not(.end) input')].map(cell => cell.getAttribute('aria-label').split(': ').slice(1).join(': ')))");
            var read = MarkTyped.Read(text).Value.Lines.Select(line => line.Select(Words).ToArray()).ToArray();
            Assert.Equal(read, drawn.Where(line => line.Length > 0).ToArray());
        }

        // What the places write is what the line says, whatever the line was.
        await window.Page.FillAsync("[id^=mark-]:is(input)", "N5 8|_/Q");
        await window.Page.Locator("[data-grid] .cell.end input").Last.FocusAsync();
        await window.Page.Keyboard.TypeAsync("|0F");
        await Line(window, "N5?8|_/Q|0F");
    }

    [Fact]
    public async Task By_touch_in_a_narrow_window_and_through_a_reload()
    {
        var bench = await Bench("band");
        var window = await Spot(bench, Look.Narrow);
        await window.Page.Locator("[data-grid] .cell input").First.ClickAsync();
        await window.Page.Keyboard.TypeAsync("TPB");
        await window.Page.Locator("[data-grid] .cell input").Nth(2).ClickAsync();
        foreach (var act in new[] { "look-alike", "turn", "maybe nothing" }) await Press(window, act);
        await Says(window, "position 3: 8 or B or nothing");
        await Press(window, "remove");
        await Line(window, "TP8|B");
        await window.Page.Locator("[data-grid] .cell.end input").ClickAsync();
        foreach (var act in new[] { "unread", "new line" }) await Press(window, act);
        await window.Page.Keyboard.TypeAsync("21");
        await Line(window, "TP8|B?/21");
        Assert.True(await window.Page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= 390);
        await window.Settled();
        await window.Page.ReloadAsync();
        await window.Settled();
        await Line(window, "TP8|B?/21");
        await Assertions.Expect(window.Page.Locator("[data-grid] [aria-label='line 1, position 3: 8 or B']")).ToHaveCountAsync(1);
        await window.Page.PressAsync("[id^=mark-]:is(input)", "Enter");
        await bench.Stored("band", "the mark", session => session.View.Live<MarkSighting>().Count == 1);
    }

    private async Task<Window> Spot(LiveBench bench, Look? look = null)
    {
        await LiveBench.Command(bench.Folder, """{"kind":"spot","spot":"U1","role":"radio"}""", "note", "band", "-");
        var window = await Open(bench, look);
        await window.Go("/dossiers/band/name/U1");
        await Assertions.Expect(window.Page.Locator("[data-lattice][data-opened] [data-grid] .cell input").First).ToBeVisibleAsync();
        return window;
    }

    private static Task Says(Window window, string label) => Assertions.Expect(window.Page.Locator("[data-grid] input:focus")).ToHaveAttributeAsync("aria-label", label);

    private static Task Line(Window window, string text) => Assertions.Expect(window.Page.Locator("[id^=mark-]:is(input)")).ToHaveValueAsync(text);

    private static Task Press(Window window, string act) => window.Page.Locator(".keys button", new() { HasTextString = act }).ClickAsync();

    private static string Words(IReadOnlyList<string> place) => place switch
    {
        [] => "not read",
        [""] => "not read, or nothing",
        _ => string.Join(" or ", place.Select(one => one switch { "" => "nothing", "*" => "any number of places", _ => one })),
    };
}
