using Lidoff.Numbers;
using Lidoff.Numbers.Spreads;

namespace Lidoff.Seeing.Measuring.Edges;

/// <summary>Where the meant edge may lie across a track: several edges, each with its weight and doubt, or none of them and then where it was clicked.</summary>
/// <param name="parts">Place, standard deviation, px, and weight of each.</param>
internal sealed class EdgeMixture(IReadOnlyList<(double At, double Sd, double Weight)> parts)
{
    private readonly double total = parts.Sum(part => part.Weight);

    /// <summary>The share of what lies within so far of a place.</summary>
    public double Within(double place, double half) => parts.Sum(part =>
        part.Weight * (NormalDistribution.Cdf((place + half - part.At) / part.Sd) - NormalDistribution.Cdf((place - half - part.At) / part.Sd))) / total;

    /// <summary>Standard uncertainty of a place as the meant edge, px: the root mean square of how far off it may be, and no less than a 90 % interval by it needs.</summary>
    public double Doubt(double place)
    {
        var square = parts.Sum(part => part.Weight * ((part.Sd * part.Sd) + ((part.At - place) * (part.At - place)))) / total;
        return Math.Max(Math.Sqrt(square), Half(place, 0.9) / NormalDistribution.Quantile(0.95));
    }

    private double Half(double place, double share)
    {
        var (low, high) = (0.0, parts.Max(part => Math.Abs(part.At - place) + (5 * part.Sd)));
        for (var round = 0; round < 40; round++)
        {
            var middle = (low + high) / 2;
            if (Within(place, middle) < share) low = middle;
            else high = middle;
        }

        return high;
    }
}
