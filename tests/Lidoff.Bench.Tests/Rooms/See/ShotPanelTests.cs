using Bunit;
using Lidoff.Bench.Rooms.See.Advising;
using Lidoff.Seeing.Advising;

namespace Lidoff.Bench.Tests.Rooms.See;

public sealed class ShotPanelTests : BunitContext
{
    [Fact]
    public void The_plan_is_there_at_once_and_follows_what_is_typed()
    {
        var panel = Render<ShotPanel>();
        // 4000 px over 40 mm, and 15 px on a letter of 0.3 mm.
        Assert.Contains("One frame is enough: 100 px/mm, about 50 are needed (15 px a letter).", panel.Find("output").TextContent, StringComparison.Ordinal);
        Field(panel, "shot-camera").Input("1000");
        Assert.Contains("shoot 3 frames along the longer side, about 20 mm each", panel.Find("output").TextContent, StringComparison.Ordinal);
        // 1.2 mm up to a lens 150 mm away: 1.2/148.8.
        Assert.Contains("lengths on the tallest top read about 0.81 % too long", panel.Find("output").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Units_are_taken_as_they_are_typed_and_an_emptied_field_means_what_is_usual()
    {
        var panel = Render<ShotPanel>();
        Field(panel, "shot-field").Input("4 cm");
        Field(panel, "shot-letter").Input("");
        Assert.Contains("100 px/mm, about 50 are needed", panel.Find("output").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void What_cannot_be_is_said_and_no_plan_is_shown()
    {
        var panel = Render<ShotPanel>();
        Field(panel, "shot-letter").Input("0");
        Field(panel, "shot-relief").Input("<script>");
        Assert.Contains(panel.FindAll(".fault"), fault => fault.TextContent.Contains("script", StringComparison.Ordinal));
        Assert.Empty(panel.FindAll("output li"));
        Field(panel, "shot-relief").Input("1");
        Assert.Equal("“letter” is 0 mm; it should be 0.02 to 50 mm.", panel.Find(".fault").TextContent);
    }

    [Fact]
    public void A_picture_at_hand_is_told_what_it_is_good_for()
    {
        Assert.Equal(["Letters of about 0.30 mm and taller can be read.", "Sharp: edges about 1.8 px wide."], ShotSentences.Of(new PictureWorth(1.8, 0), 50));
        var poor = ShotSentences.Of(new PictureWorth(10, 0.12), null);
        Assert.StartsWith("Blurred: its sharpest edges are about 10 px wide, so it shows no more than a sharp one with about 25 % of its px/mm.", poor[0], StringComparison.Ordinal);
        Assert.StartsWith("About 12 % is burnt out", poor[1], StringComparison.Ordinal);
    }

    private static AngleSharp.Dom.IElement Field(IRenderedComponent<ShotPanel> panel, string draft) => panel.Find($"[data-draft={draft}]");
}
