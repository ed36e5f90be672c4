using Lidoff.Numbers.Spreads;

namespace Lidoff.Numbers.Calculating;

/// <summary>The Monte Carlo draws of one value that were inside the formula's domain, and how many were not.</summary>
internal sealed class Draws
{
    private readonly double[] sorted;

    /// <summary>Takes the draws over (moments in the order drawn, then sorted).</summary>
    public Draws(double[] values, int skipped)
    {
        Skipped = skipped;
        Mean = values.Length == 0 ? double.NaN : FixedTreeSum.Of(values) / values.Length;
        StandardDeviation = values.Length < 2 || !double.IsFinite(Mean) ? double.NaN : Math.Sqrt(FixedTreeSum.OfSquares(values, Mean) / (values.Length - 1));
        Array.Sort(values);
        sorted = values;
    }

    public int Skipped { get; }

    public double Mean { get; }

    public double StandardDeviation { get; }

    /// <summary>The draw below which a share p lies; NaN without draws.</summary>
    public double Quantile(double p) => Coverage.Quantile(sorted, p);

    /// <summary>The middle share of all draws, as much left out below as above.</summary>
    public Interval Middle(double coverage) => Coverage.EqualTailed(sorted, coverage);

    /// <summary>The shortest interval that holds the share.</summary>
    public Interval Shortest(double coverage) => Coverage.Shortest(sorted, coverage);
}
