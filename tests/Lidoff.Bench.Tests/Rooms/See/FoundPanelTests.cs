using Bunit;
using Lidoff.Bench.Rooms.See.Finding;
using Lidoff.Bench.Rooms.See.Viewing;
using Lidoff.Bench.Tests.Looking;
using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Measuring.Rulers;
using Lidoff.Seeing.Measuring.Targets;
using Lidoff.Seeing.Rendering;
using Microsoft.AspNetCore.Components;

namespace Lidoff.Bench.Tests.Rooms.See;

/// <summary>What was found and waits for its pitch: wrong words are said and kept, right ones are stored once.</summary>
public sealed class FoundPanelTests : RoomContext
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    [Theory]
    [InlineData("wood", "wood")]
    [InlineData("0 mm", "not above zero")]
    [InlineData("-2 mm", "-2")]
    [InlineData("2 kg", "2 kg")]
    public void A_wrong_pitch_is_said_and_stays_in_its_field(string typed, string said)
    {
        var (panel, over) = Panel(Found(Target, []));
        Type(panel, "#pitch", typed);
        panel.WaitForAssertion(() => Assert.Contains(said, panel.Find(".fault, [role=alert]").TextContent, StringComparison.Ordinal), Patience);
        Assert.Equal(typed, panel.Find("#pitch").GetAttribute("value"));
        Assert.Empty(over);
        Assert.Empty(Stored());
    }

    [Fact]
    public void A_pitch_makes_the_target_the_scale()
    {
        var (panel, over) = Panel(Found(Target, []));
        Type(panel, "#pitch", "2 mm ± 0.01");
        panel.WaitForAssertion(() => Assert.True(Assert.Single(over)), Patience);
        var known = Assert.Single(Stored()).Reference.Target!;
        Assert.Equal((2.0, 0.01, 9), (known.PitchMm, known.PitchUMm, known.Tiles.Count));
    }

    // Forty gaps of a ruler whose long lines are not seen: the unit is a person's.
    [Fact]
    public void A_ruler_of_unknown_unit_is_asked_for_it_and_is_then_as_long_as_its_gaps()
    {
        var (panel, over) = Panel(Found(TargetSentences.None, [new(new(50, 60), new(250, 60), 40, 0.3, null)]));
        Type(panel, "#tick-0", "a hand");
        panel.WaitForAssertion(() => Assert.Contains("a hand", panel.Find(".fault, [role=alert]").TextContent, StringComparison.Ordinal), Patience);
        Assert.Empty(over);
        Type(panel, "#tick-0", "0.5 mm");
        panel.WaitForAssertion(() => Assert.True(Assert.Single(over)), Patience);
        Assert.Equal(20, Assert.Single(Stored()).Reference.LengthMm, 9);
        // With its twentieth line, by which it tells a slant along it.
        Assert.Equal((new PicturePoint(150, 60), 10.0), Stored()[0].Reference.Middle);
    }

    // By hand: ends known to 0.3 px of 5 px a millimetre, both of them, are 0.085 mm; the print's 0.05 % of 40 mm is 0.02 mm; together 0.087 mm.
    [Fact]
    public void A_ruler_that_tells_its_unit_says_what_scale_it_makes_with_its_doubt()
    {
        var (panel, over) = Panel(Found(TargetSentences.None, [new(new(50, 60), new(250, 60), 40, 0.3, 1)]));
        Assert.StartsWith("A ruler, 40 gaps of 1 mm: 40.000 ± 0.087 mm, which makes 5 px/mm.", panel.Find("p").TextContent, StringComparison.Ordinal);
        panel.Find("p button").Click();
        panel.WaitForAssertion(() => Assert.True(Assert.Single(over)), Patience);
        Assert.Equal((40.0, 0.02, 0.3), (Stored()[0].Reference.LengthMm, Stored()[0].Reference.UMm, Stored()[0].Reference.ClickPx));
    }

    [Fact]
    public void What_cannot_be_read_says_so_and_leaving_stores_nothing()
    {
        var (panel, over) = Panel(new Fault("a.png", "a whole picture", "“a.png” breaks off."));
        Assert.Equal("“a.png” breaks off.", panel.Find("p").TextContent);
        Assert.Empty(panel.FindAll("input"));
        panel.Find("button").Click();
        Assert.False(Assert.Single(over));
        Assert.Empty(Stored());
    }

    private static FoundTarget Target { get; } = new(
        TargetPattern.Checker, [.. from row in Enumerable.Range(0, 4) from column in Enumerable.Range(0, 4) select new TargetPlace(new(40 + (45 * column), 40 + (45 * row)), column, row)],
        [.. from row in Enumerable.Range(0, 3) from column in Enumerable.Range(0, 3) select new TargetTile(new(40 + (67.5 * column), 40 + (67.5 * row)), 1.5 * column, 1.5 * row, 0.001)],
        0.02, 0.0005, 0, 45, 0, 0.01, 0.1);

    private static Outcome<FoundScales> Found(Outcome<FoundTarget> target, IEnumerable<RulerProposal> rulers) => new FoundScales(target, [.. rulers]);

    private (IRenderedComponent<FoundPanel> Panel, List<bool> Over) Panel(Outcome<FoundScales> found)
    {
        Bench.Set("d", "");
        using var body = new MemoryStream();
        SceneRenderer.Render(Brindle.LampTop()).WritePng(body);
        body.Position = 0;
        var sha256 = Bench.Add("d", "board.png", body, "drop", CancellationToken.None).GetAwaiter().GetResult().Value.Sha256;
        var over = new List<bool>();
        return (Render<FoundPanel>(p => p.Add(o => o.Name, "d").Add(o => o.Finds, ScaleFinds.Of(sha256, found)).Add(o => o.OnOver, EventCallback.Factory.Create<bool>(this, over.Add))), over);
    }

    private static void Type(IRenderedComponent<FoundPanel> panel, string field, string text)
    {
        panel.Find(field).Input(text);
        panel.Find($"form:has({field})").Submit();
    }

    private List<ScaleSighting> Stored() => Bench.View("d", dossier => dossier.Session.View.Live<ScaleSighting>().Select(each => each.Value).ToList())!;
}
