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
    public void Far_from_the_click_or_from_one_another_or_small_they_are_none()
    {
        Assert.False(TextBlock.IsOne(Mark, new(390, 290), Whole));
        Assert.False(TextBlock.IsOne([.. Mark, PictureRegion.Box(10, 280, 60, 15)], new(200, 150), Whole));
        // Designators beside small parts: 30 px of 400.
        Assert.False(TextBlock.IsOne([PictureRegion.Box(200, 150, 30, 12)], new(205, 155), Whole));
    }
}
