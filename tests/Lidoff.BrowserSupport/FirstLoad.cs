using System.Text.Json;
using Microsoft.Playwright;

namespace Lidoff.BrowserSupport;

/// <summary>What a first visit costs, with nothing in the cache.</summary>
/// <param name="Bytes">All bytes from the bench to the browser, counted on the wire.</param>
/// <param name="Parts">Each answer: path and bytes as sent (compressed, headers included), largest first. What is left is the live connection.</param>
public sealed record FirstLoad(long Bytes, IReadOnlyList<(string Path, long Bytes)> Parts)
{
    /// <summary>The parts in words, for a fault's sentence.</summary>
    public string Says => string.Join(", ", Parts.Select(part => part.Path + " " + part.Bytes)) + ", live connection " + (Bytes - Parts.Sum(part => part.Bytes));

    /// <summary>Visits <paramref name="address"/> with a fresh browser and counts until the page is live and quiet.</summary>
    public static async Task<FirstLoad> Weigh(Uri address)
    {
        ArgumentNullException.ThrowIfNull(address);
        var tap = new WireTap(address.Port);
        await using var _ = tap.ConfigureAwait(false);
        var chromium = await Chromium.Start(through: tap.Port).ConfigureAwait(false);
        await using var __ = chromium.ConfigureAwait(false);
        var page = await chromium.Browser.NewPageAsync().ConfigureAwait(false);
        var circuit = new Circuit(page);
        var wire = await page.Context.NewCDPSessionAsync(page).ConfigureAwait(false);
        var gate = new Lock();
        var (paths, parts) = (new Dictionary<string, string>(), new List<(string Path, long Bytes)>());
        wire.Event("Network.responseReceived").OnEvent += (_, e) =>
        {
            lock (gate) paths[Text(e!.Value, "requestId")] = new Uri(e.Value.GetProperty("response").GetProperty("url").GetString()!).PathAndQuery;
        };
        wire.Event("Network.loadingFinished").OnEvent += (_, e) =>
        {
            lock (gate) parts.Add((paths.GetValueOrDefault(Text(e!.Value, "requestId"), "?"), (long)e.Value.GetProperty("encodedDataLength").GetDouble()));
        };
        await wire.SendAsync("Network.enable").ConfigureAwait(false);
        await page.GotoAsync(address.ToString()).ConfigureAwait(false);
        await page.WaitForLoadStateAsync(LoadState.NetworkIdle).ConfigureAwait(false);
        await circuit.Quiet(400).ConfigureAwait(false);
        lock (gate) return new(tap.ToBrowser, [.. parts.OrderByDescending(part => part.Bytes)]);
    }

    private static string Text(JsonElement e, string key) => e.GetProperty(key).GetString()!;
}
