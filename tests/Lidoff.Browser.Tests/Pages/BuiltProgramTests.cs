using System.Diagnostics;
using Lidoff.Browser.Tests.Fixtures;
using Lidoff.BrowserSupport;

namespace Lidoff.Browser.Tests.Pages;

/// <summary>The built program as a user starts it: <c>./lidoff demo</c>, and what its first page weighs.</summary>
public sealed class BuiltProgramTests(TheBrowser browser) : BrowserTest(browser)
{
    [Fact]
    public async Task The_demo_opens_and_its_first_page_weighs_at_most_150_kB()
    {
        // What is started below is the program as it stands now; building it is not what is looked at.
        using (var build = Process.Start(Path.Combine(Root, "lidoff"), "--version")) await build.WaitForExitAsync();
        await using var demo = await BuiltProgram.Start(Path.Combine(Root, "lidoff"), "demo", "--no-browser", "--workspace", Folder["demo"]);
        var first = await FirstLoad.Weigh(demo.Address);
        Assert.True(first.Bytes <= 150_000, $"{first.Bytes} bytes: {first.Says}");
        // A page with next to nothing in it would be light as well; the live script alone is some 48 kB.
        Assert.True(first.Bytes > 60_000, $"{first.Bytes} bytes: {first.Says}");
        TestContext.Current.SendDiagnosticMessage("{0} bytes: {1}", first.Bytes, first.Says);
        Assert.Equal(ExitCodes.Stopped, await demo.Stop());
    }
}
