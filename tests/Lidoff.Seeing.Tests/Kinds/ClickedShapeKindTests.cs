using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Measuring.Shapes;
using Lidoff.TestSupport;

namespace Lidoff.Seeing.Tests.Kinds;

public sealed class ClickedShapeKindTests
{
    private const string Good = """{"spot":"J1","shape":"pitch","what":"lower row","picture":"p.png","points":[[1,2],[3,4],[5,6.5]],"height_mm":0.8,"click_u_px":0.5}""";

    [Fact]
    public void A_line_reads_in_full_and_the_kind_stands_by_its_keys()
    {
        var read = KindLines.Read(new ClickedShapeKind(), Good);
        Assert.Equal(("J1", "lower row", ShapeKind.Pitch, "p.png", 0.8, 0.5), (read.Spot, read.What, read.Shape, read.Picture, read.HeightMm, read.ClickPx));
        Assert.Equal([new(1, 2), new(3, 4), new(5, 6.5)], read.Points);
        Assert.Equal(read, KindLines.Read(new ClickedShapeKind(), Good));
        Assert.Empty(KindLines.Complaints(new ClickedShapeKind(), Good));
    }

    [Theory]
    [InlineData("circle", "diameter")]
    [InlineData("pitch", "pitch")]
    [InlineData("angle", "angle")]
    [InlineData("area", "area")]
    public void What_nobody_named_has_its_usual_name(string shape, string what) =>
        Assert.Equal(what, KindLines.Read(new ClickedShapeKind(), $$"""{"spot":"J1","shape":"{{shape}}","picture":"p.png","points":[[1,2],[3,4],[5,6]]}""").What);

    [Fact]
    public void A_circle_that_was_moved_onto_an_edge_keeps_its_clicks()
    {
        var read = KindLines.Read(new ClickedShapeKind(), """{"spot":"H1","shape":"circle","picture":"p.png","points":[[1,2],[3,4],[5,6.5]],"ends_by":"edges 1","clicked":[[1,2],[3,4],[5,6]]}""");
        Assert.Equal(("edges 1", 3), (read.EndsBy, read.Clicked.Count));
        Assert.Single(KindLines.Say(new ClickedShapeKind(), """{"spot":"H1","shape":"circle","picture":"p.png","points":[[1,2],[3,4],[5,6.5]],"ends_by":"edges 1"}"""));
    }

    [Fact]
    public void A_bad_line_says_all_that_is_wrong() => Assert.Equal(
        [
            "\"shape\" should be one of circle, pitch, angle, area, but here it is \"star\".",
            "\"picture\" is missing; it should be a text of 1 to 255 characters.",
            "\"points\" should be a list of 3 to 1000 points [x, y], but here it is [[1,2]].",
            "\"click_u_px\" should be a number of 0 or more, but here it is -1.",
        ],
        KindLines.Say(new ClickedShapeKind(), """{"spot":"J1","shape":"star","points":[[1,2]],"click_u_px":-1}"""));
}
