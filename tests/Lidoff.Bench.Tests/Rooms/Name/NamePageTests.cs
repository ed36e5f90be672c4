using Bunit;
using Lidoff.Bench.Rooms.Name;
using Lidoff.Bench.Tests.Looking;
using Lidoff.Bench.Working;
using Lidoff.Naming.Kinds;
using Lidoff.Seeing.Kinds;
using Microsoft.Extensions.DependencyInjection;

namespace Lidoff.Bench.Tests.Rooms.Name;

public sealed class NamePageTests : RoomContext
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    [Fact]
    public void The_list_is_filtered_by_words_and_by_how_settled_and_stepped_through_by_keys()
    {
        var page = Page();
        Assert.Equal(["J2", "U1", "U10"], Spots(page));
        On(page, "#filter", e => e.Input("cable"));
        page.WaitForAssertion(() => Assert.Equal(["J2"], Spots(page)), Patience);
        On(page, "#filter", e => e.Input(""));
        page.WaitForAssertion(() => Assert.Equal(3, Spots(page).Count()), Patience);
        var selection = Services.GetRequiredService<Selection>();
        foreach (var (key, then) in new[] { ("j", "part:J2"), ("j", "part:U1"), ("k", "part:J2") })
        {
            On(page, $"[data-key={key}]", e => e.Click());
            page.WaitForAssertion(() => Assert.Equal(then, selection.Reference), Patience);
        }

        Act(page, () => page.FindAll("[aria-label='How settled'] button")[2].Click());
        page.WaitForAssertion(() => Assert.Equal(["U1"], Spots(page)), Patience);
    }

    [Fact]
    public async Task Ticked_spots_are_accepted_together_and_taken_back_together()
    {
        var page = Page();
        // Found and pressed in one turn of the page: a redraw between the two would press a button that is gone.
        await page.InvokeAsync(() => page.FindAll("form.entry button.quiet")[0].Click());
        page.WaitForAssertion(() => Assert.Contains("1 ticked spot", page.Find("label[for=accept-many]").TextContent, StringComparison.Ordinal), Patience);
        await page.InvokeAsync(() => page.Find("#accept-many").Input("compared with the twin"));
        page.WaitForAssertion(() => Assert.Equal("compared with the twin", page.Find("#accept-many").GetAttribute("value")), Patience);
        await page.InvokeAsync(() => page.Find("form:has(#accept-many)").Submit());
        page.WaitForAssertion(() => Assert.Contains("a person's word", page.Find("tbody").TextContent, StringComparison.Ordinal), Patience);
        Assert.Equal([("U1", Verdict.Accept)], Stored<IdentityDecision>().Select(each => (each.Spot, each.Verdict)));
        await Hand.Undo("d");
        Assert.Empty(Stored<IdentityDecision>());
    }

    [Fact]
    public void What_is_not_known_of_a_spot_is_a_dash_with_words_to_hear()
    {
        var page = Page();
        var cells = page.FindAll("tbody tr").First(row => row.QuerySelector("th a")!.TextContent.Trim() == "J2").QuerySelectorAll("td").Select(cell => cell.TextContent.Trim()).ToList();
        Assert.Equal(["–not read", "open", "–no verdict", "–not weighed", "–no grade", "–no date code read"], cells.Skip(2));
        Assert.All(page.FindAll("tbody .unseen"), words => Assert.Equal("true", words.PreviousElementSibling!.GetAttribute("aria-hidden")));
    }

    [Fact]
    public void Nothing_ticked_is_a_sentence()
    {
        var page = Page();
        On(page, "#accept-many", e => e.Input("because"));
        On(page, "form:has(#accept-many)", e => e.Submit());
        page.WaitForAssertion(() => Assert.Contains("Tick at least one spot whose best candidate is to be accepted.", page.Find("form:has(#accept-many) .fault").TextContent, StringComparison.Ordinal), Patience);
    }

    // Week 19 of 2021 began on Monday, 10 May (ISO 8601 calendar); 2119 as year and week is the usual spelling (common practice, no source).
    [Fact]
    public void A_four_digit_line_is_read_as_a_date_and_a_part_number_is_not()
    {
        Assert.StartsWith("2119: 2021-W19 (", MarkDate.Of(Mark("RV3028", "2119")), StringComparison.Ordinal);
        Assert.Equal("", MarkDate.Of(Mark("7400")));
        Assert.Equal("", MarkDate.Of(Mark("A", "21?9")));
        Assert.Equal("", MarkDate.Why(Mark("RV3028", "2119")));
        // There is no week 75 (ISO 8601), nor a month 75, 54 or 99.
        Assert.Equal("no date code read: 2102JK is not four digits alone, and may name plant and lot too", MarkDate.Why(Mark("N52832", "2102JK")));
        Assert.Equal("no date code read: nothing stands below the part's own line", MarkDate.Why(Mark("7400")));
        Assert.StartsWith("no date code read: '7599' has no reading as a date.", MarkDate.Why(Mark("A", "7599")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_crop_stays_within_its_picture()
    {
        // By hand: an eighth of 4,000 px is 500, kept inside at the left and the lower edge; a box of 100 × 50 with three tenths more is 130 px,
        // around its middle at 1,050, 1,025.
        var corner = SpotCrop.Around("x", 4000, 3000, new("U1", "", "", "", "x", new(10, 2990), null));
        Assert.Equal("0 2500 500 500", corner.ViewBox);
        var box = SpotCrop.Around("x", 4000, 3000, new("U1", "", "", "", "x", null, new(1000, 1000, 100, 50)));
        Assert.Equal("985 960 130 130", box.ViewBox);
    }

    private static MarkSighting Mark(params string[] lines) => new("U1", [.. lines.Select(line => new MarkLine(line, []))]);

    private static IEnumerable<string> Spots(IRenderedComponent<NamePage> page) => page.FindAll("tbody th a").Select(link => link.TextContent);

    private IRenderedComponent<NamePage> Page()
    {
        Bench.Set("d", "D",
            """{"kind":"spot","spot":"U10","role":"unmarked"}""",
            """{"kind":"spot","spot":"J2","role":"flat cable"}""",
            """{"kind":"mark","spot":"U1","lines":["N52832","QFAA?0"]}""",
            """{"kind":"body","spot":"U1","mm":[6.01,6.00],"u_mm":0.02}""");
        var page = Render<NamePage>(parameters => parameters.Add(p => p.Name, "d"));
        page.WaitForElement("tbody th a", Patience);
        return page;
    }
}
