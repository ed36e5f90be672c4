using System.Collections.Concurrent;
using Microsoft.Playwright;

namespace Lidoff.BrowserSupport;

/// <summary>
/// Writes down everything that must never happen in a page of ours: a broken security policy, a script's fault, an error on the
/// console, a request to anywhere but 127.0.0.1.
/// </summary>
public sealed class Watch
{
    private const string Policy = "lidoff-policy ";

    private readonly ConcurrentQueue<string> wrongs = new();
    private readonly ConcurrentQueue<string> forgiven = new();

    private Watch()
    {
    }

    /// <summary>What went wrong so far, less what was forgiven.</summary>
    public IReadOnlyList<string> Wrongs => [.. wrongs.Where(wrong => !forgiven.Any(part => wrong.Contains(part, StringComparison.Ordinal)))];

    /// <summary>Starts watching a context that has no page yet.</summary>
    public static async Task<Watch> Over(IBrowserContext context)
    {
        var watch = new Watch();
        await context.AddInitScriptAsync(
            "document.addEventListener('securitypolicyviolation', e => console.error('" + Policy + "' + e.effectiveDirective + ' ' + e.blockedURI + ' ' + e.sample + ' ' + e.sourceFile + ':' + e.lineNumber));")
            .ConfigureAwait(false);
        context.Console += (_, message) => watch.Said(message);
        context.WebError += (_, error) => watch.wrongs.Enqueue("page error: " + error.Error);
        context.Request += (_, request) => watch.Asked(request.Url);
        context.Page += (_, page) => page.WebSocket += (_, socket) => watch.Asked(socket.Url);
        return watch;
    }

    /// <summary>Lets pass what a test brings about on purpose: every wrong that contains <paramref name="part"/>. Never a broken policy.</summary>
    public void Forgive(string part) => forgiven.Enqueue(part);

    private void Said(IConsoleMessage message)
    {
        // Chromium's own words for a broken policy come as an error as well, and name the directive.
        if (message.Type == "error") wrongs.Enqueue("console: " + message.Text + " (" + message.Location + ")");
    }

    private void Asked(string address)
    {
        if (!Uri.TryCreate(address, UriKind.Absolute, out var uri)) wrongs.Enqueue("request to " + address);
        // data: and blob: never leave the page.
        else if (uri.Scheme is "http" or "https" or "ws" or "wss" && uri.Host != "127.0.0.1") wrongs.Enqueue("request that leaves the machine: " + address);
    }
}
