using Lidoff.Browser.Tests.Fixtures;
using Lidoff.Evidence.Entries;

namespace Lidoff.Browser.Tests.Pages;

/// <summary>What holds on every page in every look.</summary>
public sealed class EveryPageTests(TheBrowser browser) : BrowserTest(browser)
{
    public static TheoryData<string> Names => [.. AllPages.All.Select(page => page.Name)];

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

        var clashes = await KeysOfAPage.Clashes(window.Page);
        Assert.True(clashes.Length == 0, "two things under one key, " + string.Join("; ", clashes));
        await Bears(window, "");
    }
}
