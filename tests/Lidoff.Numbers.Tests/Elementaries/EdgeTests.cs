namespace Lidoff.Numbers.Tests.Elementaries;

/// <summary>Ends and special values, as IEEE 754-2019 clause 9.2 recommends them.</summary>
public sealed class EdgeTests
{
    private const double Inf = double.PositiveInfinity;

    [Fact]
    public void Exponential_and_logarithm_end_where_the_standard_says()
    {
        Assert.Equal(1, Elementary.Exp(0));
        Assert.Equal(0, Elementary.Exp(-Inf));
        Assert.Equal(Inf, Elementary.Exp(Inf));
        Assert.Equal(Inf, Elementary.Exp(710));
        Assert.Equal(double.Epsilon, Elementary.Exp(-745));
        Assert.Equal(-Inf, Elementary.Log(0));
        Assert.Equal(Inf, Elementary.Log(Inf));
        Assert.Equal(double.NaN, Elementary.Log(-1));
        Assert.Equal(0, Elementary.Log(1));
        Assert.Equal(-1, Elementary.Expm1(-Inf));
        Assert.Equal(Inf, Elementary.Expm1(Inf));
        Assert.Equal(-Inf, Elementary.Log1p(-1));
        Assert.Equal(Inf, Elementary.Log1p(Inf));
        Assert.Equal(double.NaN, Elementary.Log1p(-2));
    }

    [Fact]
    public void Not_a_number_stays_not_a_number()
    {
        Func<double, double>[] functions =
        [
            Elementary.Exp, Elementary.Expm1, Elementary.Log, Elementary.Log1p, Elementary.Log2, Elementary.Log10, Elementary.Sin, Elementary.Cos,
            Elementary.Tan, Elementary.Atan, Elementary.Asin, Elementary.Acos, Elementary.Sinh, Elementary.Cosh, Elementary.Tanh, Elementary.Cbrt,
            Elementary.LogGamma,
        ];
        Assert.All(functions, f => Assert.Equal(double.NaN, f(double.NaN)));
        Assert.Equal(double.NaN, Elementary.Pow(double.NaN, 2));
        Assert.Equal(double.NaN, Elementary.Pow(2, double.NaN));
    }

    [Fact]
    public void Whole_powers_of_ten_and_two_have_exact_logarithms()
    {
        for (var n = 0; n <= 22; n++) Assert.Equal(n, Elementary.Log10(double.Parse("1e" + n, System.Globalization.CultureInfo.InvariantCulture)));
        for (var n = -1022; n <= 1023; n++) Assert.Equal(n, Elementary.Log2(Math.ScaleB(1, n)));
    }

    [Theory]
    [InlineData(2, 10, 1024)]
    [InlineData(-2, 3, -8)]
    [InlineData(-2, 2, 4)]
    [InlineData(-2, 0.5, double.NaN)]
    [InlineData(0, 0, 1)]
    [InlineData(0, 2, 0)]
    [InlineData(0, -1, Inf)]
    [InlineData(Inf, -1, 0)]
    [InlineData(Inf, 0.5, Inf)]
    [InlineData(0.5, Inf, 0)]
    [InlineData(2, Inf, Inf)]
    [InlineData(2, -Inf, 0)]
    [InlineData(10, -3, 0.001)]
    [InlineData(1.5, 0, 1)]
    [InlineData(10, 308, 1e308)]
    [InlineData(2, -1074, double.Epsilon)]
    public void Powers_have_the_values_of_the_standard(double x, double y, double expected) => Assert.Equal(expected, Elementary.Pow(x, y));

    // All four quadrants and the axes; π, π/2, π/4 and 3π/4 to the nearest double.
    [Theory]
    [InlineData(0.0, 1, 0)]
    [InlineData(0.0, -1, 3.1415926535897931)]
    [InlineData(-0.0, -1, -3.1415926535897931)]
    [InlineData(1, 0.0, 1.5707963267948966)]
    [InlineData(-1, 0.0, -1.5707963267948966)]
    [InlineData(1, 1, 0.78539816339744828)]
    [InlineData(1, -1, 2.3561944901923448)]
    [InlineData(-1, -1, -2.3561944901923448)]
    [InlineData(Inf, Inf, 0.78539816339744828)]
    [InlineData(1, Inf, 0)]
    [InlineData(1, -Inf, 3.1415926535897931)]
    [InlineData(0.0, 0.0, 0)]
    public void Angles_of_the_axes_and_diagonals(double y, double x, double expected) => Assert.Equal(expected, Elementary.Atan2(y, x));

    [Fact]
    public void Angles_too_large_to_mean_anything_have_no_sine()
    {
        Assert.Equal(double.NaN, Elementary.Sin(2e9));
        Assert.Equal(double.NaN, Elementary.Cos(Inf));
    }
}
