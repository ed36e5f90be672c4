namespace Lidoff.Evidence.Pictures;

/// <summary>Linear least squares by Householder reflections, in plain fixed order: the same bits everywhere.</summary>
internal static class LeastSquares
{
    /// <summary>
    /// The x with least |A·x − b|; <paramref name="a"/> and <paramref name="b"/> are used up. Null when the columns hang
    /// together to within about 1e-12 of the largest.
    /// </summary>
    public static double[]? Solve(double[,] a, double[] b)
    {
        var (rows, columns) = (a.GetLength(0), a.GetLength(1));
        var diagonal = new double[columns];
        for (var k = 0; k < columns; k++)
        {
            var norm = 0.0;
            for (var i = k; i < rows; i++) norm += a[i, k] * a[i, k];
            norm = Math.Sqrt(norm);
            if (norm == 0) return null;
            if (a[k, k] < 0) norm = -norm;
            for (var i = k; i < rows; i++) a[i, k] /= norm;
            a[k, k] += 1;
            for (var j = k + 1; j < columns; j++) Reflect(a, k, i => a[i, j], (i, v) => a[i, j] = v);
            Reflect(a, k, i => b[i], (i, v) => b[i] = v);
            diagonal[k] = -norm;
        }
        var largest = 0.0;
        foreach (var d in diagonal) largest = Math.Max(largest, Math.Abs(d));
        foreach (var d in diagonal) if (Math.Abs(d) <= 1e-12 * largest) return null;

        var x = new double[columns];
        for (var k = columns - 1; k >= 0; k--)
        {
            var sum = b[k];
            for (var j = k + 1; j < columns; j++) sum -= a[k, j] * x[j];
            x[k] = sum / diagonal[k];
        }
        return x;
    }

    private static void Reflect(double[,] a, int k, Func<int, double> get, Action<int, double> set)
    {
        var rows = a.GetLength(0);
        var sum = 0.0;
        for (var i = k; i < rows; i++) sum += a[i, k] * get(i);
        sum = -sum / a[k, k];
        for (var i = k; i < rows; i++) set(i, get(i) + (sum * a[i, k]));
    }
}
