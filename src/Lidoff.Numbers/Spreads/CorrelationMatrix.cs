using Lidoff.Numbers.Failing;

namespace Lidoff.Numbers.Spreads;

/// <summary>
/// Correlation coefficients between the inputs of one calculation, in their order. Symmetric, ones on the diagonal; a set
/// of coefficients that cannot all hold (not positive semi-definite) is refused.
/// </summary>
public sealed class CorrelationMatrix
{
    private readonly double[] cells;

    private CorrelationMatrix(int count, double[] cells, double[] root)
    {
        Count = count;
        this.cells = cells;
        Root = root;
    }

    /// <summary>How many inputs it speaks of.</summary>
    public int Count { get; }

    /// <summary>The coefficient between two inputs, −1 to 1.</summary>
    public double this[int row, int column] => cells[(row * Count) + column];

    /// <summary>Lower triangular root, row by row: root · rootᵀ is the matrix.</summary>
    internal double[] Root { get; }

    /// <summary>From the coefficients (a, b, r) that are not zero, or faults that name what cannot be.</summary>
    public static Outcome<CorrelationMatrix> Of(int count, IReadOnlyList<(int A, int B, double R)> pairs)
    {
        Guard.That(count > 0, "at least one input");
        var cells = new double[count * count];
        for (var i = 0; i < count; i++) cells[(i * count) + i] = 1;
        var faults = new List<Fault>();
        foreach (var (a, b, r) in Guard.NotNull(pairs))
        {
            if (a < 0 || a >= count || b < 0 || b >= count || a == b) faults.Add(SpreadSentences.NoSuchPair(a, b, count));
            else if (!(Math.Abs(r) <= 1)) faults.Add(SpreadSentences.CoefficientOutside(a, b, r));
            else cells[(a * count) + b] = cells[(b * count) + a] = r;
        }

        if (faults.Count > 0) return Outcome<CorrelationMatrix>.Failed(faults);
        var root = Cholesky(cells, count);
        return root is null ? SpreadSentences.CannotAllHold() : new CorrelationMatrix(count, cells, root);
    }

    /// <summary>True where input <paramref name="index"/> is correlated with any other.</summary>
    internal bool Touches(int index)
    {
        for (var j = 0; j < Count; j++)
            if (j != index && this[index, j] != 0) return true;
        return false;
    }

    // A pivot that vanishes means perfect correlation: the rest of that column must vanish with it.
    private static double[]? Cholesky(double[] cells, int count)
    {
        const double rounding = 1e-10;
        var root = new double[count * count];
        for (var column = 0; column < count; column++)
        {
            var pivot = cells[(column * count) + column];
            for (var k = 0; k < column; k++) pivot -= root[(column * count) + k] * root[(column * count) + k];
            if (pivot < -rounding) return null;
            var diagonal = pivot <= rounding ? 0 : Math.Sqrt(pivot);
            root[(column * count) + column] = diagonal;
            for (var row = column + 1; row < count; row++)
            {
                var rest = cells[(row * count) + column];
                for (var k = 0; k < column; k++) rest -= root[(row * count) + k] * root[(column * count) + k];
                if (diagonal > 0) root[(row * count) + column] = rest / diagonal;
                else if (Math.Abs(rest) > 1e-4) return null;
            }
        }

        return root;
    }
}
