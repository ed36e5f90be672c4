using System.Globalization;

namespace Lidoff.Numbers.Tests.Elementaries;

/// <summary>
/// A table under <c>tests/reference/elementary</c>: arguments, the true value as the nearest double, and what that double leaves
/// over (worked out in 60 digits by <c>elementary_tables.py</c>).
/// </summary>
public static class ReferenceTable
{
    public static IReadOnlyList<double[]> Rows(string name) =>
    [
        .. File.ReadLines(Path.Combine(AppContext.BaseDirectory, "reference", "elementary", name + ".csv")).Skip(1)
            .Select(line => line.Split(',').Select(cell => double.Parse(cell, CultureInfo.InvariantCulture)).ToArray()),
    ];

    /// <summary>
    /// Largest error in units of the last place of the true value (of <paramref name="least"/> where the value is smaller),
    /// and the row where it is.
    /// </summary>
    public static (double Ulps, double[] Row) LargestError(string name, Func<double[], double> function, double least = 0)
    {
        (double Ulps, double[] Row) worst = (0, []);
        foreach (var row in Rows(name))
        {
            double expected = row[^2], rest = row[^1];
            var size = Math.Max(Math.Abs(expected), least);
            var ulp = Math.BitIncrement(size) - size;
            var error = Math.Abs((function(row) - expected - rest) / ulp);
            if (!(error <= worst.Ulps)) worst = (error, row);
        }

        return worst;
    }
}
