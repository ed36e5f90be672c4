using Lidoff.BrowserSupport;
using Lidoff.TestSupport;

namespace Lidoff.Browser.Tests.Fixtures;

/// <summary>
/// What every browser test does: its windows are watched and closed at the end; it fails on anything the watch wrote down. Where it failed
/// otherwise, or with LIDOFF_SHOTS=1, they are photographed: pictures lie under <c>artifacts/test/shots</c>.
/// </summary>
public abstract class BrowserTest(TheBrowser browser) : IAsyncLifetime
{
    private static readonly bool Shooting = Environment.GetEnvironmentVariable("LIDOFF_SHOTS") == "1";

    private readonly List<Window> windows = [];
    private readonly List<IAsyncDisposable> kept = [];
    private readonly TempFolder folder = new();

    /// <summary>The folder that holds the solution, found upwards from the test's own folder.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>A folder of this test's own, for files it brings.</summary>
    protected TempFolder Folder => folder;

    /// <summary>The browser of the run.</summary>
    protected TheBrowser Browser => browser;

    public ValueTask InitializeAsync() => ValueTask.CompletedTask;

    /// <summary>A bench on an empty workspace of this test's own; with <paramref name="dossier"/>, one dossier has been begun in it.</summary>
    protected async Task<LiveBench> Bench(string dossier = "")
    {
        var workspace = folder["workspace"];
        if (dossier.Length > 0) await LiveBench.Command(workspace, "", "new", dossier);
        return await Bench(workspace, 0);
    }

    /// <summary>A bench on a workspace that may be there already, on a port of one's choice.</summary>
    protected async Task<LiveBench> Bench(string workspace, int port)
    {
        var bench = await LiveBench.Start(workspace, port: port);
        Keep(bench);
        return bench;
    }

    /// <summary>Lets go of something at the end, once the windows on it are closed.</summary>
    protected void Keep(IAsyncDisposable what) => kept.Add(what);

    /// <summary>A window on a bench.</summary>
    protected async Task<Window> Open(LiveBench bench, Look? look = null, bool camera = false)
    {
        var window = await Window.Open(await browser.Get(camera), bench, look ?? Look.Wide, camera ? ["camera", "microphone"] : []);
        windows.Add(window);
        return window;
    }

    /// <summary>In every look a page breaks no accessibility rule and needs no sideways scrolling; at the end it is as wide as a desk's screen.</summary>
    protected static async Task Bears(Window window, string what)
    {
        ArgumentNullException.ThrowIfNull(window);
        var wrongs = new List<string>();
        foreach (var look in Look.All)
        {
            await window.Wear(look);
            await Shoot(window, what + " " + look);
            wrongs.AddRange(await window.Wrongs(look));
        }

        await window.Wear(Look.Wide);
        Assert.True(wrongs.Count == 0, string.Join('\n', wrongs));
    }

    /// <summary>Keeps a picture of a window as it is now; the last one is taken by itself. Whole pages take long to draw, so only where somebody will look.</summary>
    protected static async Task Shoot(Window window, string what)
    {
        ArgumentNullException.ThrowIfNull(window);
        if (!Shooting && TestContext.Current.TestState?.Result != TestResult.Failed) return;
        // The class and what follows it; the namespace says nothing.
        var test = TestContext.Current.Test?.TestDisplayName ?? "unnamed";
        var name = test[(test.IndexOf("Tests.", StringComparison.Ordinal) is >= 0 and var at ? test.IndexOf('.', at + 6) + 1 : 0)..] + (what.Length > 0 ? "-" + what : "");
        var safe = string.Concat(name.Select(c => char.IsAsciiLetterOrDigit(c) || c is '.' or '-' ? c : '_'));
        var shots = Path.Combine(Root, "artifacts", "test", "shots");
        await window.Page.ScreenshotAsync(new() { Path = Path.Combine(shots, safe[..Math.Min(safe.Length, 150)] + ".png"), FullPage = true });
    }

    public async ValueTask DisposeAsync()
    {
        GC.SuppressFinalize(this);
        var wrongs = new List<string>();
        for (var i = 0; i < windows.Count; i++)
        {
            if (!windows[i].Page.IsClosed) await Shoot(windows[i], windows.Count > 1 ? "window " + (i + 1) : "");
            await windows[i].Context.CloseAsync();
            wrongs.AddRange(windows[i].Watch.Wrongs);
        }

        foreach (var each in kept) await each.DisposeAsync();
        folder.Dispose();
        Assert.Empty(wrongs);
    }

    private static string FindRoot()
    {
        var at = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(at, "Lidoff.slnx"))) at = Path.GetDirectoryName(at) ?? throw new InvalidOperationException("the tests run inside the repository");
        return at;
    }
}
