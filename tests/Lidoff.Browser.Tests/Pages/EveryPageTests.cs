using Deque.AxeCore.Playwright;
using Lidoff.Browser.Tests.Fixtures;

namespace Lidoff.Browser.Tests.Pages;

/// <summary>What holds on every page in every look.</summary>
public sealed class EveryPageTests(TheBrowser browser) : BrowserTest(browser)
{
    public static TheoryData<string, string> Cases
    {
        get
        {
            var cases = new TheoryData<string, string>();
            foreach (var page in AllPages.All)
            {
                foreach (var look in Look.All) cases.Add(page.Name, look.ToString());
            }

            return cases;
        }
    }

    // The rules are axe-core's own (WCAG 2.2 A and AA, and its best practices); none is switched off.
    [Theory]
    [MemberData(nameof(Cases))]
    public async Task It_breaks_no_accessibility_rule_and_needs_no_sideways_scrolling(string name, string look)
    {
        var page = AllPages.All.Single(each => each.Name == name);
        var window = await Open(await Browser.Demo, Look.All.Single(each => each.ToString() == look));
        if (page.Status != 200) window.Watch.Forgive("Failed to load resource: the server responded with a status of " + page.Status);
        var answer = await window.Go(page.Path);
        Assert.Equal(page.Status, answer!.Status);

        var found = await window.Page.RunAxe();
        Assert.True(found.Violations.Length == 0, string.Join("\n", found.Violations.Select(violation =>
            violation.Id + ": " + violation.Help + string.Concat(violation.Nodes.Select(node => "\n  " + node.Html + "\n    " + string.Join("; ", node.Any.Concat(node.All).Concat(node.None).Select(check => check.Message)))))));

        var width = await window.Page.EvaluateAsync<int>("document.documentElement.scrollWidth");
        Assert.True(width <= await window.Page.EvaluateAsync<int>("innerWidth"), $"{page.Path} is {width} px wide");
    }
}
