using System.Diagnostics;
using Microsoft.Playwright;

namespace Lidoff.BrowserSupport;

/// <summary>Knows from its frames whether a page's live connection is up and has gone quiet.</summary>
public sealed class Circuit
{
    private long lastFrame = Stopwatch.GetTimestamp();
    private int frames;

    /// <summary>Starts listening; do it before the page goes anywhere.</summary>
    public Circuit(IPage page)
    {
        ArgumentNullException.ThrowIfNull(page);
        page.WebSocket += (_, socket) =>
        {
            Interlocked.Exchange(ref frames, 0);
            socket.FrameReceived += (_, _) => Seen();
            socket.FrameSent += (_, _) => Seen();
        };
    }

    /// <summary>
    /// Returns when the page is drawn and live: frames went both ways, and none for <paramref name="quietMs"/>. Throws after 40 s.
    /// </summary>
    public async Task Quiet(int quietMs = 200)
    {
        var watch = Stopwatch.StartNew();
        // The handshake, the circuit's start and its first drawing are more than four frames.
        while (Volatile.Read(ref frames) < 4 || Stopwatch.GetElapsedTime(Interlocked.Read(ref lastFrame)).TotalMilliseconds < quietMs)
        {
            if (watch.Elapsed.TotalSeconds > 40) throw new TimeoutException("the page's live connection did not come up within 40 s");
            await Task.Delay(20).ConfigureAwait(false);
        }
    }

    private void Seen()
    {
        Interlocked.Increment(ref frames);
        Interlocked.Exchange(ref lastFrame, Stopwatch.GetTimestamp());
    }
}
