using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Measuring.Edges;

namespace Lidoff.Seeing.Tests.Measuring.Edges;

/// <summary>
/// Edges out of focus, drawn by the error function: a step under a Gaussian blur of σ rises from 10 to 90 % within 2·1.2816·σ = 2.563·σ (tables
/// of the normal distribution), and where in that width the end lies is a rectangle, width/√12 (GUM 4.3.7).
/// </summary>
public sealed class EdgeWidthTests
{
    private const double TenToNinety = 2.5631;

    [Theory]
    [InlineData(2.0, 3.0)]
    [InlineData(2.0, 4.0)]
    [InlineData(3.0, 4.5)]
    public void A_softer_edge_adds_what_it_is_wider_from_10_to_90_per_cent(double sigma, double softer)
    {
        // Measured: 0.92 to 0.98. The program takes the whole step over its steepest slope, which is 2.507·σ, and sees the step's ends a little late.
        Assert.InRange((Doubt(softer) - Doubt(sigma)) * Math.Sqrt(12) / (TenToNinety * (softer - sigma)), 0.9, 1);
    }

    [Theory]
    // A lens and a sensor at their best: σ of half a pixel to nearly one, which is 10 to 90 % in 1.3 to 2.3 px.
    [InlineData(0.5, 0)]
    [InlineData(0.7, 0.05)]
    [InlineData(0.9, 0.12)]
    public void A_sharp_edge_adds_next_to_nothing_to_a_click_of_one_px(double sigma, double most) => Assert.InRange(Doubt(sigma), 0, most);

    [Fact]
    public void An_edge_of_a_picture_looked_at_by_halves_is_twice_as_wide_in_the_picture() => Assert.Equal(2 * Doubt(3), Doubt(3, pxPerPx: 2), 9);

    [Fact]
    public void Where_no_edge_is_nothing_is_added() => Assert.Equal(0, EdgeWidth.Doubt(Edge(3, 1), new(20, 40), new(10, 40), 1));

    private static double Doubt(double sigma, double pxPerPx = 1) => EdgeWidth.Doubt(Edge(sigma, pxPerPx), new(50 * pxPerPx, 40 * pxPerPx), new(90 * pxPerPx, 40 * pxPerPx), 1);

    private static GreyPicture Edge(double sigma, double pxPerPx)
    {
        var values = new float[100 * 80];
        for (var i = 0; i < values.Length; i++) values[i] = (float)(60 + (120 * Share(((i % 100) + 0.5 - 50) / sigma)));
        return new(100, 80, values, pxPerPx);
    }

    // Abramowitz and Stegun 26.2.17: the normal distribution to 7.5e-8.
    private static double Share(double z)
    {
        if (z < 0) return 1 - Share(-z);
        var t = 1 / (1 + (0.2316419 * z));
        return 1 - (Math.Exp(-z * z / 2) / Math.Sqrt(2 * Math.PI) * t * (0.319381530 + (t * (-0.356563782 + (t * (1.781477937 + (t * (-1.821255978 + (t * 1.330274429)))))))));
    }
}
