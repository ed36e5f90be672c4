using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Measuring.Edges;

namespace Lidoff.Seeing.Tests.Measuring.Edges;

public sealed class EdgeWidthTests
{
    [Theory]
    // A ramp of w px between two shades is known to w/√12 (a rectangle, GUM 4.3.7), of which 2.5 px are every camera's own.
    [InlineData(1, 0)]
    [InlineData(8, 1.59)]
    [InlineData(11, 2.45)]
    public void A_wide_edge_adds_its_width_over_root_twelve(double width, double expected)
    {
        Assert.Equal(expected, EdgeWidth.Doubt(Ramp(width, 1), new(50, 40), new(90, 40), 1), 0.35);
        // Twice as many px in the upright picture for one of the looked-at one: twice the doubt.
        Assert.Equal(2 * expected, EdgeWidth.Doubt(Ramp(width, 2), new(100, 80), new(180, 80), 1), 0.7);
    }

    [Fact]
    public void Where_no_edge_is_nothing_is_added() => Assert.Equal(0, EdgeWidth.Doubt(Ramp(8, 1), new(20, 40), new(10, 40), 1));

    private static GreyPicture Ramp(double width, double pxPerPx)
    {
        var values = new float[100 * 80];
        for (var i = 0; i < values.Length; i++) values[i] = (float)(60 + (120 * Math.Clamp(0.5 + (((i % 100) + 0.5 - 50) / width), 0, 1)));
        return new(100, 80, values, pxPerPx);
    }
}
