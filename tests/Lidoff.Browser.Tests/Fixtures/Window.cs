using System.Text.RegularExpressions;
using Lidoff.BrowserSupport;
using Microsoft.Playwright;

namespace Lidoff.Browser.Tests.Fixtures;

/// <summary>One browser window on a bench, logged in and watched, with cookies and storage of its own.</summary>
public sealed class Window
{
    private readonly LiveBench bench;
    private readonly Circuit circuit;

    private Window(LiveBench bench, IBrowserContext context, IPage page, Watch watch)
    {
        this.bench = bench;
        Context = context;
        Page = page;
        Watch = watch;
        circuit = new(page);
    }

    public IBrowserContext Context { get; }

    public IPage Page { get; }

    /// <summary>What went wrong in it; a test ends red when there is anything.</summary>
    public Watch Watch { get; }

    internal static async Task<Window> Open(IBrowser browser, LiveBench bench, Look look, IReadOnlyList<string> permissions)
    {
        var context = await browser.NewContextAsync(new()
        {
            ViewportSize = new() { Width = look.Width, Height = look.Height },
            ColorScheme = look.Colours,
            ReducedMotion = ReducedMotion.Reduce,
            BaseURL = bench.Own,
            AcceptDownloads = true,
            Permissions = permissions,
        });
        context.SetDefaultTimeout(Patience.Ms);
        var watch = await Watch.Over(context);
        await bench.LogIn(context);
        return new(bench, context, await context.NewPageAsync(), watch);
    }

    /// <summary>Goes to a page and waits until it is drawn and live.</summary>
    public async Task<IResponse?> Go(string path)
    {
        var answer = await Page.GotoAsync(bench.Own + path);
        await Settled();
        return answer;
    }

    /// <summary>Waits until the page has gone to an address of the bench by itself; <paramref name="path"/> may end in <c>*</c>.</summary>
    public async Task Arrives(string path)
    {
        await Assertions.Expect(Page).ToHaveURLAsync(new Regex("^" + Regex.Escape(bench.Own + path.TrimEnd('*')) + (path.EndsWith('*') ? "" : "$")));
        await Settled();
    }

    /// <summary>Types a line into a field, key by key, presses Enter, and waits until the page has taken it: the field is empty, or gone.</summary>
    public async Task Enter(string field, string text)
    {
        await Page.Locator(field).PressSequentiallyAsync(text);
        await Page.PressAsync(field, "Enter");
        await Patience.Until("taken: " + text, () => Page.EvaluateAsync<bool>("field => !document.querySelector(field)?.value", field));
    }

    /// <summary>Changes size and colours of an open page.</summary>
    public async Task Wear(Look look)
    {
        await Page.SetViewportSizeAsync(look.Width, look.Height);
        await Page.EmulateMediaAsync(new() { ColorScheme = look.Colours });
    }

    /// <summary>Waits until the page's connection is up and has gone quiet.</summary>
    public async Task Settled()
    {
        await Page.WaitForSelectorAsync("[data-live]", new() { State = WaitForSelectorState.Attached });
        await circuit.Quiet();
    }
}
