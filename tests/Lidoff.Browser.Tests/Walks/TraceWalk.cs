using System.Text.RegularExpressions;
using Lidoff.Browser.Tests.Fixtures;
using Lidoff.Tracing.Kinds;
using Microsoft.Playwright;

namespace Lidoff.Browser.Tests.Walks;

/// <summary>The room Trace as somebody uses it who has a meter in one hand: pads, touches, nets and rails, a line each.</summary>
public sealed class TraceWalk(TheBrowser browser) : BrowserTest(browser)
{
    [Fact]
    public async Task Pads_touches_nets_and_rails_are_typed_a_line_each()
    {
        var bench = await Bench("band");
        var window = await Open(bench);
        await window.Go("/dossiers/band/trace");
        await window.Enter("#pad", "U3.13 VDD power_in top");
        await window.Enter("#touch", "U3.13 C4.1 beep");
        await window.Enter("#touch", "U3.5 2k2");
        await window.Enter("#net", "VSYS: U3.5 C4.1 because the track is seen");
        await window.Enter("#rail", "VSYS 3.7 V from U4 to U1 U2 net VSYS");

        var view = bench.Stored("band", session => session.View);
        var pad = view.Live<PadSighting>().Single().Value;
        Assert.Equal(("U3", "13", "VDD", "power_in", PadSide.Top), (pad.Spot, pad.Pad, pad.Name, pad.Role, pad.Side));
        var touches = view.Live<TouchSighting>().Select(touch => touch.Value).ToList();
        Assert.Equal(("U3.13", "C4.1", true), (touches[0].A.Text, touches[0].B.Text, touches[0].Beep!.Value));
        // One point keeps the second of the pair.
        Assert.Equal(("U3.5", "C4.1", 2200.0), (touches[1].A.Text, touches[1].B.Text, touches[1].Ohms!.Value));
        Assert.Equal("the track is seen", view.Live<NetDrawn>().Single().Value.Why);
        var rail = view.Live<RailDrawn>().Single().Value;
        Assert.Equal(("VSYS", 3.7, "U4", "VSYS"), (rail.Rail, rail.V!.Value, rail.From, rail.Net));

        // Undo by key, and again.
        await window.Page.Locator("h1").ClickAsync();
        await window.Page.Keyboard.PressAsync("Control+z");
        await bench.Stored("band", "the rail taken back", session => !session.View.Live<RailDrawn>().Any());
        await window.Page.Keyboard.PressAsync("Control+Shift+z");
        await bench.Stored("band", "the rail brought again", session => session.View.Live<RailDrawn>().Any());
    }

    [Fact]
    public async Task Both_sides_of_the_demo_lie_on_one_board_and_can_be_seen_through()
    {
        var window = await Open(await Browser.Demo);
        await window.Go("/dossiers/demo/trace");
        var sides = window.Page.Locator(".book image");
        await Assertions.Expect(sides).ToHaveCountAsync(2);
        await Assertions.Expect(window.Page.Locator("section:has(#book-head)")).ToContainTextAsync("Both lie on one board by H1, H2,");
        await window.Page.Locator("h1").ClickAsync();
        await window.Page.Keyboard.PressAsync("g");
        await Assertions.Expect(window.Page.Locator("section:has(#book-head)")).ToContainTextAsync("the other side through it");
        await Assertions.Expect(sides.Last).ToHaveAttributeAsync("opacity", "0.5");
        foreach (var side in await sides.AllAsync())
        {
            var answer = await window.Page.EvaluateAsync<string>("async href => { const it = await fetch(href); return it.status + ' ' + it.headers.get('content-type'); }", await side.GetAttributeAsync("href"));
            Assert.Equal("200 image/webp", answer);
        }

        // All of it by keyboard: O leads to the slider, an arrow moves it by a twentieth.
        await window.Page.Keyboard.PressAsync("o");
        await window.Page.Keyboard.PressAsync("ArrowRight");
        await Assertions.Expect(sides.Last).ToHaveAttributeAsync("opacity", "0.55");
        await Shoot(window, "glass");
        await window.Page.Locator("h1").ClickAsync();
        await window.Page.Keyboard.PressAsync("g");
        await Assertions.Expect(window.Page.Locator(".book .hinge")).ToHaveCountAsync(1);
    }

    [Fact]
    public async Task A_table_with_decimal_commas_is_asked_about_and_then_taken()
    {
        var bench = await Bench("band");
        var window = await Open(bench);
        await window.Go("/dossiers/band/trace");
        await window.Page.ClickAsync("details.paste summary");
        await window.Page.FillAsync("#paste", "U1.1;GND;0,312 ohm\nU1.2;GND;1,500 ohm");
        var form = window.Page.Locator("details.paste form");
        await form.GetByRole(AriaRole.Button, new() { Name = "Note all" }).ClickAsync();
        // 1,500 is one and a half or fifteen hundred: nobody guesses.
        await Assertions.Expect(form.Locator("p.fault").First).ToBeVisibleAsync();
        Assert.Empty(bench.Stored("band", session => session.View.Live<TouchSighting>().ToList()));
        await Assertions.Expect(window.Page.Locator("#paste")).ToHaveValueAsync("U1.1;GND;0,312 ohm\nU1.2;GND;1,500 ohm");

        await form.Locator("select").SelectOptionAsync("Comma");
        await form.GetByRole(AriaRole.Button, new() { Name = "Note all" }).ClickAsync();
        await Assertions.Expect(window.Page.Locator("#paste")).ToHaveValueAsync("");
        Assert.Equal([0.312, 1.5], bench.Stored("band", session => session.View.Live<TouchSighting>().Select(touch => touch.Value.Ohms!.Value).ToList()));
    }

    [Fact]
    public async Task What_was_half_typed_outlives_a_reload()
    {
        var bench = await Bench("band");
        var window = await Open(bench);
        await window.Go("/dossiers/band/trace");
        await window.Page.Locator("#touch").PressSequentiallyAsync("U3.13 GND 0.3");
        await window.Settled();
        await window.Page.ReloadAsync();
        await window.Settled();
        await Assertions.Expect(window.Page.Locator("#touch")).ToHaveValueAsync("U3.13 GND 0.3");
        await window.Page.PressAsync("#touch", "Enter");
        await Assertions.Expect(window.Page.Locator("#touch")).ToHaveValueAsync("");
        Assert.Equal(0.3, bench.Stored("band", session => session.View.Live<TouchSighting>().Single().Value.Ohms));
    }
    [Fact]
    public async Task Drawings_can_be_read_at_every_width_and_are_steps_from_top_to_bottom_on_a_phone()
    {
        var demo = await Browser.Demo;
        foreach (var look in new[] { Look.Wide, Look.Narrow })
        {
            var window = await Open(demo, look);
            await window.Go("/dossiers/demo/trace");
            foreach (var name in new[] { "supply", "blocks" })
            {
                var part = window.Page.Locator($"section[aria-labelledby=diagram-{name}]");
                await Assertions.Expect(part).ToBeVisibleAsync();
                var drawn = await part.Locator("svg.diagram").IsVisibleAsync();
                Assert.Equal(look.Width > 600, drawn);
                Assert.NotEqual(drawn, await part.Locator(".steps-down").IsVisibleAsync());
                Assert.True(await part.EvaluateAsync<bool>("part => part.scrollWidth <= part.clientWidth && [...part.querySelectorAll('.fits')].every(each => each.scrollWidth <= each.clientWidth)"), $"{name} scrolls sideways at {look}");
                if (drawn)
                {
                    // What is smaller than 9.5 px is hard to read (common practice, no source).
                    var smallest = await part.Locator("svg.diagram").EvaluateAsync<double>("svg => Math.min(...[...svg.querySelectorAll('text')].map(text => text.getAttribute('font-size') * svg.getBoundingClientRect().width / svg.viewBox.baseVal.width))");
                    Assert.InRange(smallest, 9.5, 14);
                }
                else await Assertions.Expect(part.Locator(".steps-down")).ToContainTextAsync("VBAT");
            }
        }
    }

    [Fact]
    public async Task Which_pictures_lie_in_the_book_outlives_a_page_that_is_loaded_again()
    {
        var window = await Open(await Browser.Demo);
        await window.Go("/dossiers/demo/trace");
        var left = window.Page.Locator("select[data-draft=book-left]");
        var began = await left.InputValueAsync();
        var other = await left.Locator("option").EvaluateAllAsync<string>("all => all.find(each => each.textContent.includes('brindle-main-top-tilted')).value");
        Assert.NotEqual(began, other);
        await left.SelectOptionAsync(other);
        await window.Settled();
        await window.Page.ReloadAsync();
        await window.Settled();
        await Assertions.Expect(left).ToHaveValueAsync(other);
        await Assertions.Expect(window.Page.Locator(".book image").First).ToHaveAttributeAsync("href", new Regex(other));
        await left.SelectOptionAsync(began);
        await window.Settled();
    }

}
