using Deque.AxeCore.Playwright;
using Lidoff.Browser.Tests.Fixtures;
using Lidoff.Evidence.Entries;

namespace Lidoff.Browser.Tests.Pages;

/// <summary>What holds on every page in every look.</summary>
public sealed class EveryPageTests(TheBrowser browser) : BrowserTest(browser)
{
    public static TheoryData<string> Names => [.. AllPages.All.Select(page => page.Name)];

    // The rules are axe-core's own (WCAG 2.2 A and AA, and its best practices); none is switched off.
    [Theory]
    [MemberData(nameof(Names))]
    public async Task It_breaks_no_accessibility_rule_and_needs_no_sideways_scrolling(string name)
    {
        var page = AllPages.All.Single(each => each.Name == name);
        var demo = await Browser.Demo;
        var picture = demo.Stored("demo", session => session.View.Live<FileAdded>().First(file => file.Value.Name == "brindle-main-top.png").Value.Sha256);
        var window = await Open(demo);
        if (page.Status != 200) window.Watch.Forgive("Failed to load resource: the server responded with a status of " + page.Status);
        var answer = await window.Go(page.Path.Replace("{main-top}", picture, StringComparison.Ordinal));
        Assert.Equal(page.Status, answer!.Status);

        var wrongs = new List<string>((await KeysOfAPage.Clashes(window.Page)).Select(clash => "two things under one key, " + clash));
        foreach (var look in Look.All)
        {
            await window.Wear(look);
            await Shoot(window, look.ToString());
            var found = await window.Page.RunAxe();
            Assert.NotEmpty(found.Passes);
            wrongs.AddRange(found.Violations.Select(violation => look + " " + violation.Id + ": " + violation.Help
                + string.Concat(violation.Nodes.Select(node => "\n  " + node.Html + "\n    " + string.Join("; ", node.Any.Concat(node.All).Concat(node.None).Select(check => check.Message))))));
            var width = await window.Page.EvaluateAsync<int>("document.documentElement.scrollWidth");
            if (width > look.Width) wrongs.Add($"{look}: {width} px wide");
            // Nor does a table or a drawing within it; the two sides of a board are pictures that one moves about in.
            wrongs.AddRange((await window.Page.EvaluateAsync<string[]>("() => [...document.querySelectorAll('main .scroll')].filter(each => !each.querySelector('svg.book') && each.scrollWidth > each.clientWidth + 1).map(each => `${each.getAttribute('aria-label')}: ${each.scrollWidth} px in ${each.clientWidth}`)"))
                .Select(inner => look + " scrolls sideways: " + inner));
        }

        Assert.True(wrongs.Count == 0, string.Join('\n', wrongs));
    }
}
