using System.Numerics;
using Lidoff.Numbers.Reals;
using Lidoff.Numbers.Spreads;

namespace Lidoff.Numbers.Tests.Elementaries;

public sealed class ElementaryTests(ITestOutputHelper output)
{
    // Limits in units of the last place. Each is a little above the largest error seen on 3,000 rows (elementary_tables.py 3000).
    public static TheoryData<string, double, Func<double[], double>> Functions => new()
    {
        { "exp", 0.95, x => Elementary.Exp(x[0]) },
        { "expm1", 1.7, x => Elementary.Expm1(x[0]) },
        { "log", 0.8, x => Elementary.Log(x[0]) },
        { "log1p", 1.5, x => Elementary.Log1p(x[0]) },
        { "log2", 0.55, x => Elementary.Log2(x[0]) },
        { "log10", 0.52, x => Elementary.Log10(x[0]) },
        { "pow", 1.05, x => Elementary.Pow(x[0], x[1]) },
        { "sin", 0.7, x => Elementary.Sin(x[0]) },
        { "cos", 0.7, x => Elementary.Cos(x[0]) },
        { "tan", 1.7, x => Elementary.Tan(x[0]) },
        { "atan", 1.7, x => Elementary.Atan(x[0]) },
        { "atan2", 1.7, x => Elementary.Atan2(x[0], x[1]) },
        { "asin", 2.6, x => Elementary.Asin(x[0]) },
        { "acos", 2.1, x => Elementary.Acos(x[0]) },
        { "sinh", 2.1, x => Elementary.Sinh(x[0]) },
        { "cosh", 1.4, x => Elementary.Cosh(x[0]) },
        { "tanh", 2.0, x => Elementary.Tanh(x[0]) },
        { "cbrt", 0.8, x => Elementary.Cbrt(x[0]) },
        { "log_gamma", 50, x => Elementary.LogGamma(x[0]) },
        { "normal_cdf", 16, x => NormalDistribution.Cdf(x[0]) },
        { "normal_quantile", 4.5, x => NormalDistribution.Quantile(x[0]) },
        { "student_above", 2500, x => StudentT.Cdf(-x[0], x[1]) },
    };

    [Theory]
    [MemberData(nameof(Functions))]
    public void Errors_against_the_reference_table_stay_within_the_stated_units(string name, double limit, Func<double[], double> function)
    {
        var (ulps, row) = ReferenceTable.LargestError(name, function, name == "log_gamma" ? 1 : 0);
        output.WriteLine($"{name}: {ulps:F3} units at {string.Join(", ", row.Select(v => v.ToString("R")))}");
        Assert.True(ulps <= limit, $"{name}: {ulps} units at {string.Join(", ", row.Select(v => v.ToString("R")))}");
    }
}
