using Lidoff.Catalogue.Searching;

namespace Lidoff.Benchmarks;

/// <summary>How well lines were read: texts are compared in capitals and without blanks, by edit distance over the true length.</summary>
internal static class MarkScore
{
    /// <summary>
    /// The order-keeping pairing of read with true lines that costs least: for each true line the read one, or -1. Lines left over on either side cost
    /// their length. Second, the whole cost.
    /// </summary>
    public static (int[] Of, int Cost) Pair(IReadOnlyList<string> read, IReadOnlyList<string> truth)
    {
        var cost = new int[read.Count + 1, truth.Count + 1];
        for (var i = 0; i <= read.Count; i++)
        {
            for (var j = 0; j <= truth.Count; j++)
            {
                if (i + j == 0) continue;
                var best = int.MaxValue;
                if (i > 0) best = Math.Min(best, cost[i - 1, j] + read[i - 1].Length);
                if (j > 0) best = Math.Min(best, cost[i, j - 1] + truth[j - 1].Length);
                if (i > 0 && j > 0) best = Math.Min(best, cost[i - 1, j - 1] + EditDistance.Of(read[i - 1], truth[j - 1]));
                cost[i, j] = best;
            }
        }

        var pairs = Enumerable.Repeat(-1, truth.Count).ToArray();
        for (int i = read.Count, j = truth.Count; i > 0 && j > 0;)
        {
            if (cost[i, j] == cost[i - 1, j - 1] + EditDistance.Of(read[i - 1], truth[j - 1]))
            {
                pairs[--j] = --i;
            }
            else if (cost[i, j] == cost[i - 1, j] + read[i - 1].Length)
            {
                i--;
            }
            else
            {
                j--;
            }
        }

        return (pairs, cost[read.Count, truth.Count]);
    }

    /// <summary>Which characters of a read text stand where the truth has the same one, by the cheapest alignment.</summary>
    public static bool[] Right(string read, string truth)
    {
        var cost = new int[read.Length + 1, truth.Length + 1];
        for (var i = 0; i <= read.Length; i++)
        {
            for (var j = 0; j <= truth.Length; j++)
            {
                if (i == 0 || j == 0) cost[i, j] = i + j;
                else cost[i, j] = Math.Min(Math.Min(cost[i - 1, j], cost[i, j - 1]) + 1, cost[i - 1, j - 1] + (read[i - 1] == truth[j - 1] ? 0 : 1));
            }
        }

        var right = new bool[read.Length];
        for (int i = read.Length, j = truth.Length; i > 0 && j > 0;)
        {
            var same = read[i - 1] == truth[j - 1];
            if (cost[i, j] == cost[i - 1, j - 1] + (same ? 0 : 1))
            {
                right[i - 1] = same;
                i--;
                j--;
            }
            else if (cost[i, j] == cost[i - 1, j] + 1)
            {
                i--;
            }
            else
            {
                j--;
            }
        }

        return right;
    }

    /// <summary>Expected calibration error in ten equal bins: the mean gap between what was said and what came true, by how many fell in each.</summary>
    public static double Calibration(IReadOnlyList<(double Said, bool Right)> told) =>
        told.Count == 0 ? 0 : told.GroupBy(each => Math.Min(9, (int)(each.Said * 10)))
            .Sum(bin => Math.Abs(bin.Average(each => each.Said) - bin.Average(each => each.Right ? 1.0 : 0.0)) * bin.Count() / told.Count);
}
