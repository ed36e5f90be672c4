using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Composing;

/// <summary>Least squares, an equation at a time: gathers AᵀWA and AᵀWb and solves by Cholesky's way.</summary>
internal sealed class NormalEquations(int unknowns)
{
    private readonly double[,] square = new double[unknowns, unknowns];
    private readonly double[] right = new double[unknowns];

    /// <summary>Adds one equation Σ factor·unknown = value with a weight.</summary>
    public void Add(ReadOnlySpan<(int Unknown, double Factor)> terms, double value, double weight)
    {
        foreach (var (i, a) in terms)
        {
            right[i] += weight * a * value;
            foreach (var (j, b) in terms) square[i, j] += weight * a * b;
        }
    }

    /// <summary>The unknowns. Every one of them must stand in some equation; a prior does.</summary>
    public double[] Solve()
    {
        var n = unknowns;
        var lower = new double[n, n];
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                var sum = square[i, j];
                for (var k = 0; k < j; k++) sum -= lower[i, k] * lower[j, k];
                if (i != j)
                {
                    lower[i, j] = sum / lower[j, j];
                    continue;
                }

                Guard.That(sum > 0, "equations that hold every unknown");
                lower[i, i] = Math.Sqrt(sum);
            }
        }

        var solved = (double[])right.Clone();
        for (var i = 0; i < n; i++)
        {
            for (var k = 0; k < i; k++) solved[i] -= lower[i, k] * solved[k];
            solved[i] /= lower[i, i];
        }

        for (var i = n - 1; i >= 0; i--)
        {
            for (var k = i + 1; k < n; k++) solved[i] -= lower[k, i] * solved[k];
            solved[i] /= lower[i, i];
        }

        return solved;
    }
}
