using Lidoff.Seeing.Reading.Finding;
using Lidoff.Seeing.Reading.Spots;

namespace Lidoff.Seeing.Tests.Reading.Spots;

/// <summary>Lines laid out by hand: a mark on a body that fills a picture of 400 × 300 px, and texts strewn over a board.</summary>
public sealed class TextBlockTests
{
    private static readonly PictureRegion Whole = PictureRegion.Box(0, 0, 400, 300);

    private static readonly PictureRegion[] Mark = [PictureRegion.Box(100, 80, 180, 30), PictureRegion.Box(110, 125, 150, 30), PictureRegion.Box(105, 170, 120, 30)];

    [Fact]
    public void Lines_under_one_another_are_one_mark_whatever_their_order()
    {
        Assert.True(TextBlock.IsOne(Mark, new(200, 150), Whole));
        Assert.True(TextBlock.IsOne([Mark[2], Mark[0], Mark[1]], new(300, 210), Whole));
    }

    [Fact]
    public void What_hangs_together_under_a_click_is_meant_and_what_stands_beside_it_is_not()
    {
        // Another part's text 80 px to the right, 2.7 heights away.
        PictureRegion[] lines = [.. Mark, PictureRegion.Box(360, 80, 60, 30)];
        var (around, height) = TextBlock.Under(lines, new(200, 150))!.Value;
        Assert.Equal((190.0, 140.0, 180.0, 120.0, 30.0), (around.Middle.X, around.Middle.Y, around.Width, around.Height, height));
        Assert.Equal(60, TextBlock.Under(lines, new(380, 95))!.Value.Around.Width);
        // Half a height beside it is still on it, a whole one is not.
        Assert.NotNull(TextBlock.Under(lines, new(190, 68)));
        Assert.Null(TextBlock.Under(lines, new(190, 48)));
        Assert.Null(TextBlock.Under([], new(190, 48)));
    }

    [Fact]
    public void A_turned_mark_has_its_rectangle_along_its_lines()
    {
        // Two lines of 100 × 20 px at 30°, 30 px apart across: worked out with cos 30° = 0.866, sin 30° = 0.5.
        var turn = Math.PI / 6;
        PictureRegion[] lines = [new(new(200, 100), 100, 20, turn), new(new(185, 126), 100, 20, turn + Math.PI)];
        var around = TextBlock.Under(lines, new(195, 110))!.Value.Around;
        Assert.Equal((100.0, 50.0), (Math.Round(around.Width, 1), Math.Round(around.Height, 1)));
        Assert.Equal((192.5, 113.0), (Math.Round(around.Middle.X, 1), Math.Round(around.Middle.Y, 1)));
    }

    [Fact]
    public void Far_from_the_click_or_from_one_another_or_small_they_are_none()
    {
        Assert.False(TextBlock.IsOne(Mark, new(390, 290), Whole));
        Assert.False(TextBlock.IsOne([.. Mark, PictureRegion.Box(10, 280, 60, 15)], new(200, 150), Whole));
        // Designators beside small parts: 30 px of 400.
        Assert.False(TextBlock.IsOne([PictureRegion.Box(200, 150, 30, 12)], new(205, 155), Whole));
    }
}
