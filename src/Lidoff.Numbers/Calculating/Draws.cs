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
        Mean = values.Length == 0 ? double.NaN : Statistics.Mean(values);
        StandardDeviation = values.Length < 2 ? double.NaN : Statistics.StandardDeviation(values);
        Array.Sort(values);
        sorted = values;
    }

    public int Skipped { get; }

    public double Mean { get; }

    public double StandardDeviation { get; }

    /// <summary>The draw below which a share p lies, between neighbours in proportion; NaN without draws.</summary>
    public double Quantile(double p)
    {
        if (sorted.Length == 0) return double.NaN;
        var place = p * (sorted.Length - 1);
        var below = (int)place;
        var above = Math.Min(below + 1, sorted.Length - 1);
        return sorted[below] + ((place - below) * (sorted[above] - sorted[below]));
    }

    /// <summary>The middle share of all draws, as much left out below as above.</summary>
    public Interval Middle(double coverage) => new(Quantile((1 - coverage) / 2), Quantile((1 + coverage) / 2));
}
