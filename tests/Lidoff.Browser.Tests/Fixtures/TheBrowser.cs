using Lidoff.Browser.Tests.Fixtures;
using Lidoff.BrowserSupport;
using Lidoff.TestSupport;
using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(TheBrowser))]

namespace Lidoff.Browser.Tests.Fixtures;

/// <summary>
/// What the whole run shares: one browser (and a second one with a made-up camera, since that is a matter of how it is started), and
/// one bench on the demo that pages are looked at on. Each is made when first asked for.
/// </summary>
public sealed class TheBrowser : IAsyncDisposable
{
    private readonly TempFolder folder = new();
    private readonly Lazy<Task<Chromium>> plain = new(() => Chromium.Start());
    private readonly Lazy<Task<Chromium>> withCamera = new(() => Chromium.Start(camera: true));
    private readonly Lazy<Task<LiveBench>> demo;

    public TheBrowser()
    {
        Patience.Teach();
        demo = new(() => LiveBench.Start(folder["demo"], "demo"));
    }

    /// <summary>The bench on the demo dossier: to look at, not to write to.</summary>
    public Task<LiveBench> Demo => demo.Value;

    public async Task<IBrowser> Get(bool camera = false) => (await (camera ? withCamera : plain).Value).Browser;

    public async ValueTask DisposeAsync()
    {
        if (demo.IsValueCreated) await (await demo.Value).DisposeAsync();
        if (withCamera.IsValueCreated && withCamera.Value.IsCompletedSuccessfully) await withCamera.Value.Result.DisposeAsync();
        if (plain.IsValueCreated && plain.Value.IsCompletedSuccessfully) await plain.Value.Result.DisposeAsync();
        folder.Dispose();
    }
}
