using System.Globalization;
using Microsoft.Playwright;

namespace Lidoff.BrowserSupport;

/// <summary>The machine's own Chromium, driven from outside. Nothing is ever fetched.</summary>
public sealed class Chromium : IAsyncDisposable
{
    /// <summary>What a person reads when there is no Chromium.</summary>
    public const string Missing =
        "No Chromium was found: install it (Debian: apt-get install chromium), or set LIDOFF_CHROMIUM to the path of one.";

    private static readonly string[] Names = ["chromium", "chromium-browser"];

    private readonly IPlaywright driver;

    private Chromium(IPlaywright driver, IBrowser browser)
    {
        this.driver = driver;
        Browser = browser;
    }

    /// <summary>The running browser.</summary>
    public IBrowser Browser { get; }

    /// <summary>Path of the Chromium to use: LIDOFF_CHROMIUM, else the first on the PATH; null when there is none.</summary>
    public static string? Find()
    {
        if (Environment.GetEnvironmentVariable("LIDOFF_CHROMIUM") is { Length: > 0 } named) return File.Exists(named) ? named : null;
        var folders = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(':', StringSplitOptions.RemoveEmptyEntries);
        return Names.SelectMany(name => folders.Select(folder => Path.Combine(folder, name))).FirstOrDefault(File.Exists);
    }

    /// <summary>Starts it without a window.</summary>
    /// <param name="camera">With the made-up camera that Chromium brings, else with none.</param>
    /// <param name="through">A port every connection to 127.0.0.1 is led through, whatever its own; null: none.</param>
    public static async Task<Chromium> Start(bool camera = false, int? through = null)
    {
        var path = Find() ?? throw new InvalidOperationException(Missing);
        List<string> flags =
        [
            // A name that a page asks for finds nothing, so that a forgotten outside address fails here too, and not only where there is no net.
            "--host-resolver-rules=" + (through is { } port ? string.Create(CultureInfo.InvariantCulture, $"MAP 127.0.0.1 127.0.0.1:{port}") : "MAP * ~NOTFOUND , EXCLUDE 127.0.0.1 , EXCLUDE localhost"),
            "--disable-background-networking",
            "--no-first-run",
        ];
        // Never the machine's own camera; and nobody is there to answer whether a page may use one.
        flags.AddRange([camera ? "--use-fake-device-for-media-stream" : "--use-fake-device-for-media-stream=device-count=0", "--use-fake-ui-for-media-stream"]);
        var driver = await Playwright.CreateAsync().ConfigureAwait(false);
        var browser = await driver.Chromium.LaunchAsync(new() { ExecutablePath = path, Headless = true, Args = flags }).ConfigureAwait(false);
        return new(driver, browser);
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await Browser.CloseAsync().ConfigureAwait(false);
        driver.Dispose();
    }
}
