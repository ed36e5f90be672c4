using Lidoff.Numbers.Failing;

namespace Lidoff.Numbers.Spreads;

/// <summary>Sums, means, spreads and correlation of readings, careful with digits (checked against NIST's reference sets).</summary>
public static class Statistics
{
    /// <summary>Sum in the order given, with the lost digits carried along (Neumaier). Zero for none.</summary>
    public static double Sum(ReadOnlySpan<double> values)
    {
        double sum = 0, lost = 0;
        foreach (var value in values)
        {
            var next = sum + value;
            lost += Math.Abs(sum) >= Math.Abs(value) ? sum - next + value : value - next + sum;
            sum = next;
        }

        return double.IsFinite(lost) ? sum + lost : sum;
    }

    /// <summary>Arithmetic mean of at least one value.</summary>
    public static double Mean(ReadOnlySpan<double> values)
    {
        Guard.That(values.Length > 0, "at least one value");
        return Sum(values) / values.Length;
    }

    /// <summary>The middle value, or the mean of the two in the middle, of at least one.</summary>
    public static double Median(IEnumerable<double> values)
    {
        var sorted = values.Order().ToArray();
        Guard.That(sorted.Length > 0, "at least one value");
        var middle = sorted.Length / 2;
        return sorted.Length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }

    /// <summary>Sample standard deviation (divisor n − 1) of at least two values.</summary>
    public static double StandardDeviation(ReadOnlySpan<double> values)
    {
        Guard.That(values.Length > 1, "at least two values");
        return Math.Sqrt(SumOfProducts(values, values) / (values.Length - 1));
    }

    /// <summary>Standard deviation of the mean of at least two values (GUM 4.2.3).</summary>
    public static double StandardError(ReadOnlySpan<double> values) => StandardDeviation(values) / Math.Sqrt(values.Length);

    /// <summary>Correlation coefficient of two equally long columns (at least two rows), −1 to 1; NaN when a column is constant.</summary>
    public static double Correlation(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        Guard.That(a.Length == b.Length && a.Length > 1, "two columns of the same length, at least two rows");
        return SumOfProducts(a, b) / (Math.Sqrt(SumOfProducts(a, a)) * Math.Sqrt(SumOfProducts(b, b)));
    }

    // Σ(a − ā)(b − b̄), corrected for what the rounded means leave over (Chan, Golub and LeVeque 1983).
    internal static double SumOfProducts(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        double meanA = Mean(a), meanB = Mean(b);
        double[] products = new double[a.Length], restA = new double[a.Length], restB = new double[a.Length];
        for (var i = 0; i < a.Length; i++)
        {
            restA[i] = a[i] - meanA;
            restB[i] = b[i] - meanB;
            products[i] = restA[i] * restB[i];
        }

        return Sum(products) - (Sum(restA) * Sum(restB) / a.Length);
    }
}
