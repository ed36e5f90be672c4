using Lidoff.Numbers.Spreads;
using Lidoff.Numbers.Spreads.Shapes;

namespace Lidoff.Numbers.Calculating;

/// <summary>Covariances of the inputs of one run: given coefficients, shared sources (fully correlated), shared identities.</summary>
internal sealed class InputCovariance
{
    private readonly double[] cells;
    private readonly int count;

    private InputCovariance(double[] cells, int count)
    {
        this.cells = cells;
        this.count = count;
    }

    public static InputCovariance Of(IReadOnlyList<Uncertain> inputs, CorrelationMatrix? correlations)
    {
        var count = inputs.Count;
        var cells = new double[count * count];
        for (var a = 0; a < count; a++)
            for (var b = 0; b < count; b++)
                cells[(a * count) + b] = a == b ? inputs[a].U * inputs[a].U : Between(inputs[a], inputs[b], correlations?[a, b] ?? 0);
        return new(cells, count);
    }

    /// <summary>gᵢ Σⱼ Cᵢⱼ gⱼ for each input i; they sum to the variance of the value.</summary>
    public double[] VarianceTerms(ReadOnlySpan<double> slopes)
    {
        var terms = new double[count];
        Span<double> row = new double[count];
        for (var i = 0; i < count; i++)
        {
            // An input without spread does not count, not even where the slope is infinite.
            for (var j = 0; j < count; j++)
            {
                var covariance = cells[(i * count) + j];
                row[j] = covariance == 0 ? 0 : covariance * slopes[j];
            }

            var sum = Statistics.Sum(row);
            terms[i] = sum == 0 ? 0 : slopes[i] * sum;
        }

        return terms;
    }

    private static double Between(Uncertain a, Uncertain b, double coefficient)
    {
        if (a.Shape is MixtureShape m && b.Shape is MixtureShape n && a.Identity == b.Identity) return Shared(m, n, SameSource(a, b));
        return (SameSource(a, b) ? 1 : coefficient) * a.U * b.U;
    }

    // The alternatives move together; a shared source adds the movement inside each alternative.
    private static double Shared(MixtureShape a, MixtureShape b, bool sameSource)
    {
        var terms = new double[a.Weights.Length];
        for (var k = 0; k < terms.Length; k++)
        {
            Shape x = a.Alternatives[k], y = b.Alternatives[k];
            terms[k] = a.Weights[k] * (((x.Mean - a.Mean) * (y.Mean - b.Mean)) + (sameSource ? x.U * y.U : 0));
        }

        return Statistics.Sum(terms);
    }

    private static bool SameSource(Uncertain a, Uncertain b) => a.Source.Length > 0 && a.Source == b.Source;
}
