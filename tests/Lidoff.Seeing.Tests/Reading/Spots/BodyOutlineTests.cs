using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Reading.Finding;
using Lidoff.Seeing.Reading.Spots;

namespace Lidoff.Seeing.Tests.Reading.Spots;

/// <summary>Rectangles worked out by hand.</summary>
public sealed class BodyOutlineTests
{
    private static PictureLength Length(double x1, double y1, double x2, double y2) => new("p", new(x1, y1), new(x2, y2), 0, 1);

    [Fact]
    public void Three_corners_clicked_in_turn_make_the_rectangle()
    {
        // Along the foot of a body 80 wide and 60 high whose top left lies at (10, 20), then up its right side.
        var found = BodyOutline.Of(Length(10, 80, 90, 80), Length(90, 80, 90, 20))!.Value;
        Assert.Equal(new PictureRegion(new(50, 50), 80, 60, 0), found);
        // Whichever way each side was clicked.
        foreach (var (a, b) in new[] { (Length(90, 80, 10, 80), Length(90, 80, 90, 20)), (Length(10, 80, 90, 80), Length(90, 20, 90, 80)), (Length(90, 80, 90, 20), Length(10, 80, 90, 80)) })
        {
            var corners = BodyOutline.Of(a, b)!.Value.Corners;
            Assert.Equal((10.0, 90.0, 20.0, 80.0), (Math.Round(corners.Min(c => c.X), 6), Math.Round(corners.Max(c => c.X), 6), Math.Round(corners.Min(c => c.Y), 6), Math.Round(corners.Max(c => c.Y), 6)));
        }
    }

    [Fact]
    public void Sides_across_the_middles_make_the_same_rectangle_at_any_turn()
    {
        // A 3-4-5 triangle: 100 px along (0.8, 0.6), 50 px along (-0.6, 0.8), both through (200, 100).
        var found = BodyOutline.Of(Length(160, 70, 240, 130), Length(215, 80, 185, 120))!.Value;
        Assert.Equal((200.0, 100.0, 100.0, 50.0), (found.Middle.X, found.Middle.Y, found.Width, found.Height));
        Assert.Equal(Math.Atan2(0.6, 0.8), found.Turn, 9);
    }

    [Fact]
    public void Two_lengths_of_something_else_are_no_body()
    {
        // Along one another, and far from square.
        Assert.Null(BodyOutline.Of(Length(0, 0, 80, 0), Length(0, 10, 60, 10)));
        Assert.Null(BodyOutline.Of(Length(0, 0, 80, 0), Length(40, -20, 80, 20)));
        // Square to one another and apart.
        Assert.Null(BodyOutline.Of(Length(0, 0, 80, 0), Length(300, 200, 300, 260)));
        Assert.Null(BodyOutline.Of(Length(5, 5, 5, 5), Length(5, 5, 5, 60)));
    }
}
