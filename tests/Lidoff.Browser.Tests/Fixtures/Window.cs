using System.Text.RegularExpressions;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
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

    /// <summary>
    /// What is wrong with the page in a look it wears: broken rules of axe-core (WCAG 2.2 A and AA, and its best practices; none is switched off)
    /// and sideways scrolling. Nothing but colours differs in the dark, so only the rules about colours are tried there.
    /// </summary>
    public async Task<IReadOnlyList<string>> Wrongs(Look look)
    {
        ArgumentNullException.ThrowIfNull(look);
        var dark = look.Colours == ColorScheme.Dark;
        var found = await Page.RunAxe(new AxeRunOptions { RunOnly = dark ? new() { Type = "rule", Values = ["color-contrast", "link-in-text-block"] } : null, ResultTypes = [ResultType.Violations] });
        // Of text over a picture alone no contrast can be told.
        var wrongs = dark || found.Passes.Length > 0 ? new List<string>() : [look + ": no rule was tried"];
        wrongs.AddRange(found.Violations.Select(violation => look + " " + violation.Id + ": " + violation.Help
            + string.Concat(violation.Nodes.Select(node => "\n  " + node.Html + "\n    " + string.Join("; ", node.Any.Concat(node.All).Concat(node.None).Select(check => check.Message))))));
        var width = await Page.EvaluateAsync<int>("document.documentElement.scrollWidth");
        if (width > look.Width) wrongs.Add($"{look}: {width} px wide");
        // Nor does a table or a drawing within it; the two sides of a board are pictures that one moves about in.
        wrongs.AddRange((await Page.EvaluateAsync<string[]>("() => [...document.querySelectorAll('main .scroll')].filter(each => !each.querySelector('svg.book') && each.scrollWidth > each.clientWidth + 1).map(each => `${each.getAttribute('aria-label')}: ${each.scrollWidth} px in ${each.clientWidth}`)"))
            .Select(inner => look + " scrolls sideways: " + inner));
        return wrongs;
    }

    /// <summary>Waits until the page's connection is up and has gone quiet.</summary>
    public async Task Settled()
    {
        await Page.WaitForSelectorAsync("[data-live]", new() { State = WaitForSelectorState.Attached });
        await circuit.Quiet();
    }
}
