namespace Lidoff.Seeing.Measuring;

/// <summary>The little linear algebra a scale needs: symmetric positive matrices of a handful of rows, in fixed order of sums.</summary>
internal static class PositiveMatrix
{
    /// <summary>Lower Cholesky factor of <paramref name="a"/>; null when it is not positive definite.</summary>
    public static double[,]? Factor(double[,] a)
    {
        var n = a.GetLength(0);
        var l = new double[n, n];
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                var sum = a[i, j];
                for (var k = 0; k < j; k++) sum -= l[i, k] * l[j, k];
                if (i != j)
                {
                    l[i, j] = sum / l[j, j];
                    continue;
                }

                if (!(sum > 0)) return null;
                l[i, i] = Math.Sqrt(sum);
            }
        }

        return l;
    }

    /// <summary>Solves L·Lᵀ·x = b.</summary>
    public static double[] Solve(double[,] l, double[] b)
    {
        var n = b.Length;
        var x = (double[])b.Clone();
        for (var i = 0; i < n; i++)
        {
            for (var k = 0; k < i; k++) x[i] -= l[i, k] * x[k];
            x[i] /= l[i, i];
        }

        for (var i = n - 1; i >= 0; i--)
        {
            for (var k = i + 1; k < n; k++) x[i] -= l[k, i] * x[k];
            x[i] /= l[i, i];
        }

        return x;
    }

    /// <summary>The inverse of L·Lᵀ.</summary>
    public static double[,] Inverse(double[,] l)
    {
        var n = l.GetLength(0);
        var inverse = new double[n, n];
        for (var j = 0; j < n; j++)
        {
            var unit = new double[n];
            unit[j] = 1;
            var column = Solve(l, unit);
            for (var i = 0; i < n; i++) inverse[i, j] = column[i];
        }

        return inverse;
    }
}
