using Lidoff.Bench.Rooms.See.Typed;

namespace Lidoff.Bench.Tests.Rooms.See;

public sealed class CornersTests
{
    // A rectangle of 40 by 20 px.
    [Theory]
    [InlineData(120, 110, true)]
    [InlineData(100, 100, true)]
    [InlineData(139, 101, true)]
    [InlineData(141, 110, false)]
    [InlineData(120, 121, false)]
    [InlineData(99, 99, false)]
    public void A_point_lies_within_the_three_corners_of_a_body_or_it_does_not(double x, double y, bool within)
    {
        Assert.Equal(within, Corners.Hold(new(100, 100), new(140, 100), new(140, 120), new(x, y)));
        // The same, clicked the other way round and turned by 90 degrees.
        Assert.Equal(within, Corners.Hold(new(-120, 140), new(-100, 140), new(-100, 100), new(-y, x)));
    }

    [Fact]
    public void Corners_on_one_line_hold_nothing() => Assert.False(Corners.Hold(new(0, 0), new(5, 5), new(9, 9), new(5, 5)));
}
