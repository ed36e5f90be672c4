using Lidoff.Numbers.Spreads;

namespace Lidoff.Numbers.Tests.Spreads;

public sealed class StudentTTests
{
    private static readonly double[] Coverages = [0.6827, 0.90, 0.95, 0.9545, 0.99, 0.9973];

    // JCGM 100:2008, table G.2.
    [Theory]
    [InlineData(1, 1.84, 6.31, 12.71, 13.97, 63.66, 235.78)]
    [InlineData(2, 1.32, 2.92, 4.30, 4.53, 9.92, 19.21)]
    [InlineData(3, 1.20, 2.35, 3.18, 3.31, 5.84, 9.22)]
    [InlineData(4, 1.14, 2.13, 2.78, 2.87, 4.60, 6.62)]
    [InlineData(5, 1.11, 2.02, 2.57, 2.65, 4.03, 5.51)]
    [InlineData(6, 1.09, 1.94, 2.45, 2.52, 3.71, 4.90)]
    [InlineData(8, 1.07, 1.86, 2.31, 2.37, 3.36, 4.28)]
    [InlineData(10, 1.05, 1.81, 2.23, 2.28, 3.17, 3.96)]
    [InlineData(16, 1.03, 1.75, 2.12, 2.17, 2.92, 3.54)]
    [InlineData(20, 1.03, 1.72, 2.09, 2.13, 2.85, 3.42)]
    [InlineData(50, 1.01, 1.68, 2.01, 2.05, 2.68, 3.16)]
    [InlineData(double.PositiveInfinity, 1.000, 1.645, 1.960, 2.000, 2.576, 3.000)]
    public void Coverage_factors_match_GUM_table_G2(double dof, params double[] printed)
    {
        for (var i = 0; i < Coverages.Length; i++)
            Assert.Equal(printed[i], StudentT.TwoSided(dof, Coverages[i]), double.IsInfinity(dof) ? 0.0006 : 0.00501);
    }

    [Fact]
    public void Quantile_undoes_the_distribution_function()
    {
        foreach (var dof in new[] { 0.7, 1, 2.5, 9, 40, 1000, double.PositiveInfinity })
            foreach (var p in new[] { 1e-6, 0.001, 0.05, 0.4, 0.5, 0.7, 0.95, 0.9999 })
                Assert.Equal(p, StudentT.Cdf(StudentT.Quantile(p, dof), dof), 1e-12);
    }
}
