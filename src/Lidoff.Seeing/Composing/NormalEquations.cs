using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring;

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
        var factor = PositiveMatrix.Factor(square);
        Guard.That(factor is not null, "equations that hold every unknown");
        return PositiveMatrix.Solve(factor, right);
    }
}
