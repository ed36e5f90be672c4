using System.Net;
using System.Xml.Linq;
using Lidoff.Bench.Rooms.Trace;
using Lidoff.Bench.Tests.Hosting;
using Lidoff.Bench.Tests.Looking;

namespace Lidoff.Bench.Tests.Rooms.Trace;

public sealed class DiagramsTests
{
    private static readonly string[] Lines =
    [
        """{"kind":"spot","spot":"BT1","role":"cell <script>"}""",
        """{"kind":"spot","spot":"U4","role":"charger"}""",
        """{"kind":"rail","rail":"VBAT","v":3.7,"from":"BT1","to":["U4"]}""",
        """{"kind":"rail","rail":"VSYS","v":3.3,"from":"U4","to":["U1"]}""",
    ];

    [Fact]
    public async Task Rails_become_a_drawing_that_is_shown_and_taken_home()
    {
        await using var bench = await RunningBench.LoggedIn();
        bench.Bench.Set("brindle", "", Lines);
        var page = await bench.Page("/dossiers/brindle/trace");
        Assert.Contains("class=\"diagram\"", page, StringComparison.Ordinal);
        Assert.DoesNotContain("<script>\"", page, StringComparison.Ordinal);
        foreach (var name in new[] { "supply", "blocks" })
        {
            // A file that another program opens: well-formed XML with every part in it.
            var texts = XDocument.Parse(await bench.Page($"/dossiers/brindle/diagrams/{name}.svg")).Descendants().Where(e => e.Name.LocalName == "text").Select(e => e.Value).ToList();
            Assert.Superset(new HashSet<string> { "BT1", "U4", "U1" }, texts.ToHashSet());
        }
    }

    [Fact]
    public void What_is_too_wide_to_be_read_stands_from_top_to_bottom_with_every_box_and_line_of_the_drawing()
    {
        using var bench = new FakeBench();
        bench.Set("d", "", Lines);
        var supply = bench.View("d", DiagramsView.Of)!.Diagrams.Single(diagram => diagram.Name == "supply");
        Assert.Equal(["BT1", "U4", "U1"], supply.Steps.Select(step => step.Name));
        Assert.Equal([["U4"], ["U1"]], supply.Steps.SelectMany(step => step.Leads).Select(lead => lead.To));
        Assert.Contains("VBAT", supply.Steps[0].Leads[0].Label, StringComparison.Ordinal);
        // The smallest words are 11 units high, 9.5 px at 0.87: smaller is not read at arm's length (common practice, no source).
        Assert.Equal("from-300", (supply with { Width = 100 }).FromWidth);
        Assert.Equal("from-900", (supply with { Width = 1000 }).FromWidth);
        Assert.Equal("from-1700", (supply with { Width = 9000 }).FromWidth);
    }

    [Fact]
    public async Task A_voltage_that_does_not_fit_its_rail_is_said_beside_the_drawing()
    {
        await using var bench = await RunningBench.LoggedIn();
        // 1.8 V at a part on a 3.3 V rail: one of the two is wrong (Ohm's law on a wire; common practice, no source).
        bench.Bench.Set("brindle", "", [.. Lines, """{"kind":"supply","spot":"U1","v":1.8,"u_v":0.01}"""]);
        Assert.Contains("<b>Look:</b> <bdi>U1 reads 1.8 V", System.Net.WebUtility.HtmlDecode(await bench.Page("/dossiers/brindle/trace")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Where_there_is_nothing_to_draw_nothing_is_there()
    {
        await using var bench = await RunningBench.LoggedIn();
        bench.Bench.Set("empty", "");
        using var none = await bench.Get("/dossiers/empty/diagrams/supply.svg");
        Assert.Equal(HttpStatusCode.NotFound, none.StatusCode);
        using var other = await bench.Get("/dossiers/brindle/diagrams/..%2f..%2fx.svg");
        Assert.Equal(HttpStatusCode.NotFound, other.StatusCode);
    }
}
