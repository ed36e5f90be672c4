using System.Numerics;
using Lidoff.Numbers.Failing;

namespace Lidoff.Numbers.Spreads;

/// <summary>
/// Sums of many numbers, fast and in an order of their own: element i goes to lane i mod 8, lanes are gathered for blocks of
/// 256, blocks are paired like a tree. The order does not depend on the vector width, and the error grows only with the
/// logarithm of the count.
/// </summary>
public static class FixedTreeSum
{
    private const int Lanes = 8;
    private const int Leaf = 256;

    /// <summary>Sum of the values; zero for none.</summary>
    public static double Of(ReadOnlySpan<double> values) => Of(values, 0, square: false);

    /// <summary>Sum of the squares of the distances from <paramref name="centre"/>; zero for none.</summary>
    public static double OfSquares(ReadOnlySpan<double> values, double centre = 0) => Of(values, Guard.Finite(centre), square: true);

    private static double Of(ReadOnlySpan<double> values, double centre, bool square)
    {
        if (values.Length <= Leaf) return OfLeaf(values, centre, square);

        // The left half is the largest leaf count that is a power of two and leaves something to the right.
        var leaves = (values.Length + Leaf - 1) / Leaf;
        var left = (int)BitOperations.RoundUpToPowerOf2((uint)leaves) / 2 * Leaf;
        return Of(values[..left], centre, square) + Of(values[left..], centre, square);
    }

    private static double OfLeaf(ReadOnlySpan<double> values, double centre, bool square)
    {
        Span<double> lanes = stackalloc double[Lanes];
        lanes.Clear();
        var whole = values.Length / Lanes * Lanes;
        for (var lane = 0; lane < Lanes; lane += Vector<double>.Count)
        {
            var sum = Vector<double>.Zero;
            var middle = new Vector<double>(centre);
            for (var i = lane; i < whole; i += Lanes)
            {
                var value = new Vector<double>(values[i..]);
                if (square)
                {
                    value -= middle;
                    value *= value;
                }

                sum += value;
            }

            sum.CopyTo(lanes[lane..]);
        }

        for (var i = whole; i < values.Length; i++)
            lanes[i - whole] += square ? (values[i] - centre) * (values[i] - centre) : values[i];
        return ((lanes[0] + lanes[4]) + (lanes[2] + lanes[6])) + ((lanes[1] + lanes[5]) + (lanes[3] + lanes[7]));
    }
}
