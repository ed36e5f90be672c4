using System.Globalization;
using Lidoff.Numbers.Typed.Codes;

namespace Lidoff.Numbers.Tests.Typed.Codes;

public sealed class ESeriesTests
{
    // The table as read in Wikipedia "E series of preferred numbers" (IEC 60063).
    private const string E96 = "100 102 105 107 110 113 115 118 121 124 127 130 133 137 140 143 147 150 154 158 162 165 169 174 178 182 187 191 196 200 205 210 215 221 226 232 237 243 249 255 261 267 274 280 287 294 301 309 316 324 332 340 348 357 365 374 383 392 402 412 422 432 442 453 464 475 487 499 511 523 536 549 562 576 590 604 619 634 649 665 681 698 715 732 750 768 787 806 825 845 866 887 909 931 953 976";

    [Fact]
    public void E96_is_the_published_table() =>
        Assert.Equal(E96, string.Join(' ', ESeries.Figures(96).Select(figure => figure.ToString(CultureInfo.InvariantCulture))));

    [Fact]
    public void E48_is_every_second_of_E96() => Assert.Equal(ESeries.Figures(96).Where((_, at) => at % 2 == 0), ESeries.Figures(48));

    [Fact]
    public void The_places_where_the_formula_is_not_the_standard()
    {
        // Exceptions named in IEC 60063: eight values of E24, and 9.20 in E192.
        foreach (var figure in (int[])[27, 30, 33, 36, 39, 43, 47, 82]) Assert.Contains(figure, ESeries.Figures(24));
        foreach (var figure in (int[])[26, 29, 32, 35, 38, 42, 46, 83]) Assert.DoesNotContain(figure, ESeries.Figures(24));
        Assert.Contains(920, ESeries.Figures(192));
        Assert.DoesNotContain(919, ESeries.Figures(192));
        Assert.All(ESeries.Figures(96), figure => Assert.Contains(figure, ESeries.Figures(192)));
    }

    [Fact]
    public void Coarse_series_are_the_remembered_ones()
    {
        Assert.Equal([10, 22, 47], ESeries.Figures(3));
        Assert.Equal([10, 15, 22, 33, 47, 68], ESeries.Figures(6));
        Assert.Equal([10, 12, 15, 18, 22, 27, 33, 39, 47, 56, 68, 82], ESeries.Figures(12));
        Assert.All(ESeries.Sizes, size => Assert.Equal(size, ESeries.Figures(size).Count));
    }

    [Theory]
    [InlineData(4.7e3, 3)]
    [InlineData(5.6e-12, 12)]
    [InlineData(49.9e3, 96)]
    [InlineData(92.0, 192)]
    [InlineData(1e6, 3)]
    [InlineData(5000, null)]
    public void A_value_knows_its_series(double value, int? size) => Assert.Equal(size, ESeries.Coarsest(value));

    [Theory]
    [InlineData(24, 5000, 5100)]
    [InlineData(96, 9.9, 10)]
    [InlineData(12, 0.98e-6, 1e-6)]
    [InlineData(3, 8, 10)]
    public void The_nearest_value_is_found_across_decades(int size, double value, double nearest) => Assert.Equal(nearest, ESeries.Nearest(size, value));
}
