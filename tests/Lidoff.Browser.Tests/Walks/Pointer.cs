using Lidoff.Browser.Tests.Fixtures;
using Microsoft.Playwright;

namespace Lidoff.Browser.Tests.Walks;

/// <summary>What a hand on the mouse does on a picture.</summary>
internal static class Pointer
{
    /// <summary>With the scale stored, a click names things.</summary>
    public static Task Pointing(Window window) => Assertions.Expect(window.Page.Locator("#stage[data-tool=point]")).ToBeVisibleAsync();

    /// <summary>Clicks at shares of the stage's width and height.</summary>
    public static async Task Click(Window window, double x, double y)
    {
        await window.Page.Locator("#stage").ScrollIntoViewIfNeededAsync();
        var box = await window.Page.Locator("#stage").BoundingBoxAsync();
        await ClickAt(window, box!.Width * x, box.Height * y);
    }

    /// <summary>Clicks at CSS px from the stage's corner.</summary>
    public static async Task ClickAt(Window window, double x, double y)
    {
        await window.Page.Locator("#stage").ClickAsync(new() { Position = new() { X = (float)x, Y = (float)y } });
        await window.Settled();
    }

    /// <summary>Types into the line at the point just set; it goes away once the spot is stored.</summary>
    public static async Task Say(Window window, string words)
    {
        var field = window.Page.Locator("[id^=spot-]:is(input)");
        await Assertions.Expect(field).ToBeFocusedAsync();
        await field.PressSequentiallyAsync(words);
        await field.PressAsync("Enter");
        await Assertions.Expect(field).ToHaveCountAsync(0);
    }

    /// <summary>Drops a file on the page as from a file manager's window.</summary>
    public static async Task Drop(Window window, string name, byte[] bytes)
    {
        var carried = await window.Page.EvaluateHandleAsync(
            "([name, packed]) => { const carried = new DataTransfer(); carried.items.add(new File([Uint8Array.from(atob(packed), c => c.charCodeAt(0))], name)); return carried; }",
            new[] { name, Convert.ToBase64String(bytes) });
        await window.Page.DispatchEventAsync("main", "drop", new { dataTransfer = carried });
    }

    /// <summary>Where the two magenta squares of <see cref="Files.Ruled"/> are seen, in CSS px from the stage's corner; waits until they are.</summary>
    public static async Task<((double X, double Y) Left, (double X, double Y) Right)> Squares(IPage page)
    {
        double[] seen = [];
        await Patience.Until("the picture is drawn", async () =>
        {
            seen = await page.Locator(".stage canvas").First.EvaluateAsync<double[]>("""
                canvas => {
                  const sums = [[0, 0, 0], [0, 0, 0]];
                  if (!canvas.width || !canvas.height) return [];
                  const { data } = canvas.getContext('2d').getImageData(0, 0, canvas.width, canvas.height);
                  for (let i = 0; i < data.length; i += 4) {
                    if (data[i] < 200 || data[i + 1] > 60 || data[i + 2] < 200) continue;
                    const x = (i / 4) % canvas.width, y = Math.floor(i / 4 / canvas.width), side = sums[x < canvas.width / 2 ? 0 : 1];
                    side[0] += 1; side[1] += x + 0.5; side[2] += y + 0.5;
                  }
                  const ratio = canvas.width / canvas.getBoundingClientRect().width;
                  return sums.every(s => s[0]) ? sums.flatMap(s => [s[1] / s[0] / ratio, s[2] / s[0] / ratio]) : [];
                }
                """);
            return seen.Length == 4;
        });
        return ((seen[0], seen[1]), (seen[2], seen[3]));
    }
}
