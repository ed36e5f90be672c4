using Lidoff.Browser.Tests.Fixtures;
using Microsoft.Playwright;

namespace Lidoff.Browser.Tests.Walks;

/// <summary>The connection drops in mid-entry: what was typed survives, and is stored once it is back.</summary>
public sealed class ConnectionTests(TheBrowser browser) : BrowserTest(browser)
{
    [Fact]
    public async Task What_was_typed_outlives_a_connection_that_is_cut()
    {
        var bench = await Bench();
        var window = await Open(bench);
        var lines = new List<IWebSocketRoute>();
        await window.Page.RouteWebSocketAsync("**/_blazor**", line =>
        {
            lock (lines) lines.Add(line);
            line.ConnectToServer();
        });
        window.Watch.Forgive("WebSocket");
        window.Watch.Forgive("Connection disconnected");
        await window.Page.GotoAsync(bench.Own + "/");
        await window.Page.WaitForSelectorAsync("[data-live]");
        await window.Page.FillAsync("#new", "half-typ");
        await lines[0].CloseAsync(new() { Code = 4000 });
        await window.Page.Locator("#new").PressSequentiallyAsync("ed");
        await Assertions.Expect(window.Page.Locator("#components-reconnect-modal")).ToBeHiddenAsync();
        Assert.True(lines.Count > 1, "the page did not connect again");
        await Assertions.Expect(window.Page.Locator("#new")).ToHaveValueAsync("half-typed");
        await window.Page.PressAsync("#new", "End");
        await window.Page.PressAsync("#new", "Enter");
        await window.Arrives("/dossiers/half-typed/see");
    }

    [Fact]
    public async Task What_was_chosen_outlives_a_connection_that_is_cut_and_a_page_loaded_again()
    {
        var bench = await Bench("band");
        var window = await Open(bench);
        var lines = new List<IWebSocketRoute>();
        await window.Page.RouteWebSocketAsync("**/_blazor**", line =>
        {
            lock (lines) lines.Add(line);
            line.ConnectToServer();
        });
        window.Watch.Forgive("WebSocket");
        window.Watch.Forgive("Connection disconnected");
        await window.Go("/dossiers/band/trace");
        var mode = window.Page.GetByLabel("A bare number is");
        await lines[0].CloseAsync(new() { Code = 4000 });
        await mode.SelectOptionAsync("Volts");
        await Assertions.Expect(window.Page.Locator("#components-reconnect-modal")).ToBeHiddenAsync();
        await Patience.Until("connected again", () => Task.FromResult(lines.Count > 1));
        await window.Settled();
        await window.Enter("#touch", "U3.1 GND 1.8");
        await bench.Stored("band", "a reading in volts", session => session.View.Live<Lidoff.Tracing.Kinds.TouchSighting>().Any(touch => touch.Value.Volts == 1.8));

        await mode.SelectOptionAsync("Ask");
        await window.Page.Locator("#touch").PressSequentiallyAsync("U3.2 GND");
        await window.Settled();
        await window.Page.ReloadAsync();
        await window.Settled();
        await Assertions.Expect(mode).ToHaveValueAsync("Ask");
        await Assertions.Expect(window.Page.Locator("#touch")).ToHaveValueAsync("U3.2 GND");
        await window.Page.Locator("#touch").PressAsync("End");
        await window.Page.Locator("#touch").PressSequentiallyAsync(" 3");
        await window.Page.Locator("#touch").PressAsync("Enter");
        await Assertions.Expect(window.Page.Locator("p.fault").First).ToBeVisibleAsync();
    }

    [Fact]
    public async Task What_was_typed_outlives_a_restart_of_the_workbench()
    {
        var folder = Folder["workspace"];
        var bench = await Bench(folder, 0);
        var window = await Open(bench);
        // The page tries to come back while nobody answers; that is what is looked at here.
        window.Watch.Forgive("ERR_CONNECTION_REFUSED");
        window.Watch.Forgive("WebSocket");
        window.Watch.Forgive("Connection disconnected");
        window.Watch.Forgive("Failed to");
        await window.Go("/");
        await window.Page.FillAsync("#new", "half-typed");
        await bench.Stop();
        await Assertions.Expect(window.Page.Locator("#components-reconnect-modal")).ToBeVisibleAsync();
        await Assertions.Expect(window.Page.Locator("#components-reconnect-modal")).ToContainTextAsync("What was stored is safe.");
        await Shoot(window, "stopped");

        var again = await Bench(folder, bench.Address.Port);
        await window.Page.GotoAsync(again.Address.ToString());
        await window.Settled();
        await Assertions.Expect(window.Page.Locator("#new")).ToHaveValueAsync("half-typed");
        await window.Page.PressAsync("#new", "Enter");
        await window.Arrives("/dossiers/half-typed/see");
        // Stored, so nothing is offered again.
        await window.Go("/");
        await Assertions.Expect(window.Page.Locator("#new")).ToHaveValueAsync("");
    }
}
