using System.CommandLine;
using System.Globalization;
using Lidoff.Evidence.Store;
using Lidoff.TestSupport;
using Microsoft.Playwright;

namespace Lidoff.Browser.Tests.Fixtures;

/// <summary>
/// The real workbench on a workspace of its own, in this process: the command line is run like a user's, only its streams and its
/// end are ours. Several windows can log in, one after the other.
/// </summary>
public sealed class LiveBench : IAsyncDisposable
{
    private readonly CancellationTokenSource stop = new();
    private readonly SemaphoreSlim door = new(1);
    private readonly BenchTalk talk = new();
    private IReadOnlyList<Cookie> session = [];
    private Task<int> running = Task.FromResult(0);

    private LiveBench(string folder) => Folder = folder;

    /// <summary>The workspace's folder.</summary>
    public string Folder { get; }

    /// <summary>The address that was printed, with its key.</summary>
    public Uri Address { get; private set; } = null!;

    /// <summary>Where pages are, without a trailing slash.</summary>
    public string Own => "http://127.0.0.1:" + Address.Port.ToString(CultureInfo.InvariantCulture);

    /// <summary>What the program said on stderr.</summary>
    public IReadOnlyList<string> Said => talk.Said;

    /// <summary>Runs <c>lidoff bench</c> (or <c>demo</c>) on a folder and returns when its page answers.</summary>
    public static async Task<LiveBench> Start(string folder, string command = "bench", int port = 0)
    {
        var bench = new LiveBench(folder);
        bench.running = Task.Run(() => LidoffProgram.Run(
            [command, "--workspace", folder, "--port", port.ToString(CultureInfo.InvariantCulture), "--no-browser"], SeatOf(bench.talk, folder), bench.stop.Token));
        await Task.WhenAny(bench.talk.Ready, bench.running);
        if (!bench.talk.Ready.IsCompleted) throw new InvalidOperationException("lidoff " + command + " ended: " + string.Join('\n', bench.Said));
        bench.Address = await bench.talk.Ready;
        return bench;
    }

    /// <summary>A bench that runs as a program of its own, to log in to; whoever started it stops it.</summary>
    public static LiveBench Elsewhere(Uri address, string folder) => new(folder) { Address = address };

    /// <summary>Runs another command on a workspace, as a user would in a terminal; <paramref name="input"/> is its standard input.</summary>
    public static async Task<IReadOnlyList<string>> Command(string folder, string input, params IReadOnlyList<string> arguments)
    {
        var talk = new BenchTalk(input);
        var code = await LidoffProgram.Run([.. arguments, "--workspace", folder], SeatOf(talk, folder), CancellationToken.None);
        Assert.True(code == 0, string.Join(' ', arguments) + " gave " + code.ToString(CultureInfo.InvariantCulture) + ": " + string.Join('\n', talk.Said.Concat(talk.Out)));
        return talk.Out;
    }

    /// <summary>Logs a context in: the first with the key, which is good for one login; later ones with the cookie it gave.</summary>
    public async Task LogIn(IBrowserContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        await door.WaitAsync();
        try
        {
            if (session.Count > 0)
            {
                await context.AddCookiesAsync(session.Select(cookie => new Cookie { Name = cookie.Name, Value = cookie.Value, Domain = cookie.Domain, Path = cookie.Path, HttpOnly = true, SameSite = SameSiteAttribute.Strict }));
                return;
            }

            var page = await context.NewPageAsync();
            await page.GotoAsync(Address.ToString());
            session = [.. (await context.CookiesAsync()).Where(cookie => cookie.Name.StartsWith("lidoff-" + Address.Port.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal)).Select(cookie => new Cookie { Name = cookie.Name, Value = cookie.Value, Domain = cookie.Domain, Path = cookie.Path })];
            await page.CloseAsync();
        }
        finally
        {
            door.Release();
        }
    }

    /// <summary>Reads a dossier from the disk, through a second opening of the workspace as another process would have.</summary>
    public T Stored<T>(string dossier, Func<DossierSession, T> look)
    {
        ArgumentNullException.ThrowIfNull(look);
        using var workspace = Workspace.Open(Folder, Seeds.Of("a reader"), TimeProvider.System).Value;
        return look(DossierSession.Open(workspace, dossier, Desk.Kinds).Value);
    }

    /// <summary>Waits until what is stored is as it should be; a page's Enter and the disk are a moment apart.</summary>
    public Task Stored(string dossier, string what, Func<DossierSession, bool> asWanted) =>
        Patience.Until("in the store: " + what, () => Task.FromResult(Stored(dossier, asWanted)));

    /// <summary>Stops it as Ctrl+C would.</summary>
    public async Task Stop()
    {
        await stop.CancelAsync();
        await running;
    }

    public async ValueTask DisposeAsync()
    {
        await Stop();
        stop.Dispose();
        door.Dispose();
    }

    private static Seat SeatOf(BenchTalk talk, string folder) =>
        new(talk, TimeProvider.System, AppContext.BaseDirectory, folder, folder, new Option<string?>("--workspace"));
}
