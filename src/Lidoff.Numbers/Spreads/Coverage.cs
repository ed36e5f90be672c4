using Lidoff.Numbers.Failing;

namespace Lidoff.Numbers.Spreads;

/// <summary>Coverage intervals of sorted draws (JCGM 101 clause 7.7).</summary>
public static class Coverage
{
    /// <summary>The value below which a share <paramref name="p"/> (0 to 1) of the sorted draws lies, in proportion between neighbours; NaN for none.</summary>
    public static double Quantile(ReadOnlySpan<double> sorted, double p)
    {
        Guard.That(p >= 0 && p <= 1, "a share from 0 to 1");
        if (sorted.Length == 0) return double.NaN;
        var place = p * (sorted.Length - 1);
        var below = (int)place;
        var above = Math.Min(below + 1, sorted.Length - 1);
        return sorted[below] + ((place - below) * (sorted[above] - sorted[below]));
    }

    /// <summary>The middle share of the sorted draws: as much left out below as above.</summary>
    public static Interval EqualTailed(ReadOnlySpan<double> sorted, double coverage) =>
        new(Quantile(sorted, (1 - coverage) / 2), Quantile(sorted, (1 + coverage) / 2));

    /// <summary>The shortest interval between two draws that spans the share; the lowest of equals. NaN for no draws.</summary>
    public static Interval Shortest(ReadOnlySpan<double> sorted, double coverage)
    {
        Guard.That(coverage >= 0 && coverage <= 1, "a coverage from 0 to 1");
        if (sorted.Length == 0) return new(double.NaN, double.NaN);

        // q = whole part of pM + ½, as the clause has it.
        var span = Math.Min((int)((coverage * sorted.Length) + 0.5), sorted.Length - 1);
        var best = 0;
        for (var i = 1; i + span < sorted.Length; i++)
            if (sorted[i + span] - sorted[i] < sorted[best + span] - sorted[best]) best = i;
        return new(sorted[best], sorted[best + span]);
    }
}
