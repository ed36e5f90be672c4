using Lidoff.Browser.Tests.Fixtures;
using Lidoff.Opening.Cautioning;
using Lidoff.Opening.Kinds;
using Microsoft.Playwright;

namespace Lidoff.Browser.Tests.Walks;

/// <summary>The room Open as somebody uses it who opens a band: specimen, behaviour, cell, plan, steps, a break.</summary>
public sealed class OpenWalk(TheBrowser browser) : BrowserTest(browser)
{
    [Fact]
    public async Task A_band_is_opened_step_by_step_and_left_for_a_break()
    {
        var bench = await Bench("band");
        var window = await Open(bench);
        await window.Go("/dossiers/band/open");
        await window.Enter("#specimen", "A second-hand band, 23.4 g");
        await window.Enter("#state", "idle: nothing lit, 6.1 µA ± 0.4");
        await window.Enter("#mass", "B1 3.61 g ± 0.01");
        await window.Page.GetByRole(AriaRole.Button, new() { Name = "It is disconnected now" }).ClickAsync();
        await window.Enter("#plan", "cut the seam #cut !seal ?mass:whole");
        await Assertions.Expect(window.Page.Locator("li.plan")).ToContainTextAsync("cut the seam");

        // The caution stands beside the field before the step is stored.
        await window.Page.Locator("#step").PressSequentiallyAsync("warm the rim #heat @plate 4min ~70 °C");
        await Assertions.Expect(window.Page.Locator("form.entry", new() { Has = window.Page.Locator("#step") })).ToContainTextAsync(Cautions.For(StepAct.Heat)[0].Say);
        await window.Page.PressAsync("#step", "Enter");
        await Assertions.Expect(window.Page.Locator("#step")).ToHaveValueAsync("");

        // Something wrong gets a sentence, and what was typed stays.
        await window.Page.Locator("#step").PressSequentiallyAsync("pry #lever");
        await window.Page.PressAsync("#step", "Enter");
        await Assertions.Expect(window.Page.Locator("p.fault")).ToContainTextAsync("There is no act \"lever\"");
        await Assertions.Expect(window.Page.Locator("#step")).ToHaveValueAsync("pry #lever");
        await window.Page.FillAsync("#step", "");

        await window.Enter("#in-hand", "the flat cable, half out of its socket");
        var view = bench.Stored("band", session => session.View);
        Assert.Equal(("A", 23.4), (view.Live<SpecimenSighting>().Single().Value.Specimen, view.Live<SpecimenSighting>().Single().Value.MassG));
        var state = view.Live<StateSighting>().Single().Value;
        Assert.Equal(("idle", 6.1, 0.4), (state.Name, state.CurrentUa!.Value, state.UUa!.Value));
        Assert.Equal(("B1", 3.61, 0.01), (view.Live<MassSighting>().Single().Value.Spot, view.Live<MassSighting>().Single().Value.G, view.Live<MassSighting>().Single().Value.UG));
        Assert.False(view.Live<CellSighting>().Single().Value.Connected);
        Assert.Equal("seal", view.Live<StepPlanned>().Single().Value.Destroys);
        var step = view.Live<StepSighting>().Single().Value;
        Assert.Equal((StepAct.Heat, "plate", "70 °C", 4.0), (step.Act, step.Tool, step.Setting, step.Minutes!.Value));
        Assert.Equal("the flat cable, half out of its socket", view.Live<BenchLeft>().Single().Value.InHand);

        // After the break the card on top says how things stood.
        var later = await Open(bench, Look.Narrow);
        await later.Go("/dossiers/band/open");
        var card = later.Page.Locator("section.resume");
        await Assertions.Expect(card).ToContainTextAsync("Disconnected");
        await Assertions.Expect(card).ToContainTextAsync("cut the seam");
        await Assertions.Expect(card).ToContainTextAsync("the flat cable, half out of its socket");
    }
}
