using Lidoff.Evidence.Pictures;

namespace Lidoff.Evidence.Tests.Pictures;

public sealed class BoardMapTests
{
    // A board 40 mm wide, both sides photographed at 50 px per mm.
    private static readonly BoardMap Front = new(BoardSide.Front, PictureMaps.Scaled("front.jpg", "board", 0.02, 0.02));

    private static readonly BoardMap Back = new(
        BoardSide.Back,
        PictureMaps.Scaled("back.jpg", "behind", 0.02, 0.02).Then(BoardMap.FromBehind("behind", 40)));

    [Fact]
    public void A_through_hole_is_one_point_on_both_sides()
    {
        // 3 mm from the left edge in front is 37 mm from the left edge behind.
        Assert.Equal(new(3, 10), Front.ToBoard(new(150, 500)));
        Assert.Equal(0, Back.ToBoard(new(1850, 500)).DistanceTo(new(3, 10)), 1e-12);
        Assert.Equal(0, Back.ToPicture(new(3, 10)).DistanceTo(new(1850, 500)), 1e-9);
    }

    [Fact]
    public void A_picture_mirrored_before_it_came_does_not_fit_its_side()
    {
        Assert.True(Front.SideFits(new(1, 1)));
        Assert.True(Back.SideFits(new(1, 1)));
        var flipped = PictureMaps.Mirrored("flipped.jpg", "front.jpg", 1000).Then(PictureMaps.Scaled("front.jpg", "board", 0.02, 0.02));
        Assert.False(new BoardMap(BoardSide.Front, flipped).SideFits(new(1, 1)));
    }

    [Fact]
    public void Only_maps_onto_the_board_are_taken() =>
        Assert.Throws<ArgumentException>(() => new BoardMap(BoardSide.Front, PictureMaps.Scaled("a", "b", 1, 1)));
}
