using Lidoff.Browser.Tests.Fixtures;
using Microsoft.Playwright;

namespace Lidoff.Browser.Tests.Walks;

/// <summary>A question on the strip is pressed: its answer stands where one looks, at the bench and on a phone.</summary>
public sealed class QuestionWalk(TheBrowser browser) : BrowserTest(browser)
{
    [Fact]
    public async Task The_answer_of_a_question_that_is_pressed_is_in_view()
    {
        var bench = await Bench("band");
        await LiveBench.Command(bench.Folder, """
            {"kind":"mass","spot":"B1","g":3.61,"u_g":0.01}
            {"kind":"question","question":"Q1","text":"How heavy is the cell?","ties":["mass:B1"]}
            {"kind":"question","question":"Q2","text":"Why a lamp?"}
            """, "note", "band", "-");
        foreach (var look in new[] { Look.Narrow, Look.Wide })
        {
            var window = await Open(bench, look);
            await window.Go("/dossiers/band/name");
            var answer = window.Page.Locator(".drawer .answer");
            await window.Page.GetByRole(AriaRole.Button, new() { Name = "How heavy is the cell?" }).ClickAsync();
            await Assertions.Expect(answer).ToContainTextAsync("3.61");
            await Assertions.Expect(answer).ToBeInViewportAsync(new() { Ratio = 1 });
            await Assertions.Expect(window.Page.Locator("#because-head")).ToBeInViewportAsync();
            Assert.True(await window.Page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= look.Width);
            await Shoot(window, "answer");

            // One that nothing answers says so, and pressed once more it closes.
            var open = window.Page.GetByRole(AriaRole.Button, new() { Name = "Why a lamp?" });
            await open.ClickAsync();
            await Assertions.Expect(answer).ToContainTextAsync("Nothing is tied to it yet.");
            await Assertions.Expect(answer).ToBeInViewportAsync(new() { Ratio = 1 });
            await open.ClickAsync();
            await Assertions.Expect(answer).ToHaveCountAsync(0);
        }
    }
}
