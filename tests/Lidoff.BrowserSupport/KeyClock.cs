using Microsoft.Playwright;

namespace Lidoff.BrowserSupport;

/// <summary>
/// Times keystrokes inside the page: from the key going down to the frame painted after everything it caused, the answers of the live
/// connection included.
/// </summary>
public sealed class KeyClock
{
    // Every message of the live connection is taken as caused by the last key; keys come slowly enough for that. "Painted" is the
    // first task after an animation frame, when the frame has been handed over.
    private const string Script = """
        (() => {
          const painted = (then) => requestAnimationFrame(() => {
            const channel = new MessageChannel();
            channel.port1.onmessage = () => then(performance.now());
            channel.port2.postMessage(0);
          });
          const keys = window.keyTimes = [];
          const note = () => {
            const key = keys.at(-1);
            if (key) painted((at) => { key.end = at; });
          };
          document.addEventListener('keydown', () => { keys.push({ start: performance.now(), end: 0, answers: 0 }); note(); }, true);
          const Line = window.WebSocket;
          window.WebSocket = class extends Line {
            constructor(...of) {
              super(...of);
              this.addEventListener('message', () => setTimeout(() => { if (keys.length) keys.at(-1).answers += 1; note(); }));
            }
          };
        })();
        """;

    private readonly IPage page;

    private KeyClock(IPage page) => this.page = page;

    /// <summary>Puts the clock into every page that <paramref name="page"/> goes to from now on.</summary>
    public static async Task<KeyClock> In(IPage page)
    {
        ArgumentNullException.ThrowIfNull(page);
        await page.AddInitScriptAsync(Script).ConfigureAwait(false);
        return new(page);
    }

    /// <summary>Presses keys one by one, each after the last one's effect has settled, and gives the milliseconds of each.</summary>
    /// <param name="keys">Keys as Playwright names them.</param>
    /// <param name="answered">Least share of keys that the other end must have answered, 0 to 1; fewer throws, since then nothing was measured.</param>
    public async Task<IReadOnlyList<double>> Press(IEnumerable<string> keys, double answered = 0.9)
    {
        ArgumentNullException.ThrowIfNull(keys);
        await page.EvaluateAsync("keyTimes.length = 0").ConfigureAwait(false);
        foreach (var key in keys)
        {
            await page.Keyboard.PressAsync(key).ConfigureAwait(false);
            await Task.Delay(250).ConfigureAwait(false);
        }

        var times = await page.EvaluateAsync<double[]>("keyTimes.map(k => k.end - k.start)").ConfigureAwait(false);
        var share = await page.EvaluateAsync<double>("keyTimes.filter(k => k.answers > 0).length / keyTimes.length").ConfigureAwait(false);
        if (share < answered) throw new InvalidOperationException(FormattableString.Invariant($"the workbench answered only {share:0.00} of the keys"));
        return times;
    }
}
