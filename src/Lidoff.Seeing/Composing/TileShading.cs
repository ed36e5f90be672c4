using Lidoff.Numbers;
using Lidoff.Numbers.Spreads;
using OpenCvSharp;

namespace Lidoff.Seeing.Composing;

/// <summary>
/// How bright each tile is and how its light falls off from the middle, told by what neighbouring tiles show of one and the same place.
/// The fall-off is one for all tiles, as lens and ring lamp are; brightness is each tile's own, a channel at a time.
/// </summary>
internal static class TileShading
{
    private const int Terms = 6;
    private const int Cells = 40;
    // How much of each term is usual. Tiles in a row cannot tell a lamp to one side from an exposure that grows from tile to tile; on a stand it
    // is the lamp.
    private static readonly double[] Usual = [0.25, 0.25, 0.5, 0.2, 0.5, 0.5];
    private const double UsualGain = 0.1;
    private const double UsualTint = 0.03;
    private const double Noise = 0.04;
    private const double Fixed = 1e12;

    /// <summary>Evens out every tile's pixels in place.</summary>
    public static void Even(IReadOnlyList<LaidTile> laid)
    {
        var small = laid.Select(each => Small(each.Tile.Colour)).ToList();
        try
        {
            var pairs = Pairs(laid, small);
            var all = Solve(laid.Count, pairs, seen => Elementary.Log(seen.Item0 + seen.Item1 + seen.Item2), UsualGain, Usual, new double[laid.Count + Terms]);
            // Colours differ by the camera's white balance alone, a little and for a whole tile.
            var factors = Enumerable.Range(0, 3).Select(band => Solve(laid.Count, pairs, seen => Elementary.Log(seen[band]), UsualTint, null, all)).ToArray();
            for (var k = 0; k < laid.Count; k++) Apply(laid[k].Tile.Colour, k, laid.Count, factors);
        }
        finally
        {
            small.ForEach(each => each.Dispose());
        }
    }

    private static Mat Small(Mat colour)
    {
        var small = new Mat();
        Cv2.Resize(colour, small, new(Cells * 4, Cells * 4 * colour.Height / colour.Width), 0, 0, InterpolationFlags.Area);
        Cv2.GaussianBlur(small, small, default, 1.5);
        small.ConvertTo(small, MatType.CV_32FC3);
        return small;
    }

    private sealed record Shared(int One, int Other, (double X, double Y) AtOne, (double X, double Y) AtOther, Vec3f SeenOne, Vec3f SeenOther);

    private static List<Shared> Pairs(IReadOnlyList<LaidTile> laid, List<Mat> small)
    {
        var pairs = new List<Shared>();
        for (var i = 0; i < laid.Count; i++)
        {
            for (var row = 1; row < Cells; row++)
            {
                for (var column = 1; column < Cells; column++)
                {
                    var (x, y) = (laid[i].Tile.Width * (double)column / Cells, laid[i].Tile.Height * (double)row / Cells);
                    var (bx, by) = laid[i].To(x, y);
                    for (var j = i + 1; j < laid.Count; j++)
                    {
                        var (u, v) = laid[j].From(bx, by);
                        if (u < 4 || v < 4 || u > laid[j].Tile.Width - 4 || v > laid[j].Tile.Height - 4) continue;
                        var (one, other) = (Seen(small[i], laid[i].Tile, x, y), Seen(small[j], laid[j].Tile, u, v));
                        if (Usable(one) && Usable(other)) pairs.Add(new(i, j, Within(laid[i].Tile, x, y), Within(laid[j].Tile, u, v), one, other));
                    }
                }
            }
        }

        return pairs;
    }

    // Burnt out or black says nothing of the lamp.
    private static bool Usable(Vec3f seen) => Math.Min(seen.Item0, Math.Min(seen.Item1, seen.Item2)) > 6 && Math.Max(seen.Item0, Math.Max(seen.Item1, seen.Item2)) < 248;

    private static (double X, double Y) Within(Tile tile, double x, double y) => ((2 * x / tile.Width) - 1, (2 * y / tile.Height) - 1);

    private static Vec3f Seen(Mat small, Tile tile, double x, double y) =>
        small.At<Vec3f>(Math.Clamp((int)(y / tile.Height * small.Height), 0, small.Height - 1), Math.Clamp((int)(x / tile.Width * small.Width), 0, small.Width - 1));

    /// <summary>Logarithms of each tile's brightness, then the terms of the fall-off, near a start; without what is usual of them the terms stay as they are.</summary>
    private static double[] Solve(int tiles, List<Shared> pairs, Func<Vec3f, double> seen, double usualGain, double[]? usual, double[] start)
    {
        double[] found = [.. start];
        var reach = 1.0;
        for (var round = 0; round < 8; round++)
        {
            var equations = new NormalEquations(tiles + Terms);
            var left = new List<double>();
            foreach (var pair in pairs)
            {
                var value = seen(pair.SeenOne) - seen(pair.SeenOther);
                var (one, other) = (Fall(pair.AtOne), Fall(pair.AtOther));
                var rest = value - found[pair.One] + found[pair.Other];
                for (var t = 0; t < Terms; t++) rest -= found[tiles + t] * (one[t] - other[t]);
                left.Add(Math.Abs(rest));
                if (Math.Abs(rest) >= reach) continue;
                var weight = 1 - (rest / reach * (rest / reach));
                List<(int, double)> terms = [(pair.One, 1), (pair.Other, -1)];
                for (var t = 0; t < Terms; t++) terms.Add((tiles + t, one[t] - other[t]));
                equations.Add([.. terms], value, weight * weight / (Noise * Noise));
            }

            for (var k = 0; k < tiles; k++) equations.Add([(k, 1)], start[k], 1 / (usualGain * usualGain));
            for (var t = 0; t < Terms; t++) equations.Add([(tiles + t, 1)], start[tiles + t], usual is null ? Fixed : 1 / (usual[t] * usual[t]));
            found = equations.Solve();
            // Tiles that share nothing but glare leave their light as it is.
            reach = left.Count == 0 ? reach : Math.Max(0.05, 4 * Statistics.Median(left));
        }

        return found;
    }

    private static double[] Fall((double X, double Y) at)
    {
        var (x, y) = at;
        var square = (x * x) + (y * y);
        return [x, y, x * x, x * y, y * y, square * square];
    }

    private static void Apply(Mat colour, int tile, int tiles, double[][] factors)
    {
        const int grid = 64;
        using var coarse = new Mat(grid, grid, MatType.CV_32FC3);
        for (var row = 0; row < grid; row++)
        {
            for (var column = 0; column < grid; column++)
            {
                var fall = Fall(((2 * (column + 0.5) / grid) - 1, (2 * (row + 0.5) / grid) - 1));
                var gain = new float[3];
                for (var band = 0; band < 3; band++)
                {
                    var log = factors[band][tile];
                    for (var t = 0; t < Terms; t++) log += factors[band][tiles + t] * fall[t];
                    gain[band] = (float)Elementary.Exp(-log);
                }

                coarse.Set(row, column, new Vec3f(gain[0], gain[1], gain[2]));
            }
        }

        using var gains = new Mat();
        Cv2.Resize(coarse, gains, colour.Size(), 0, 0, InterpolationFlags.Cubic);
        Cv2.Multiply(colour, gains, colour, 1, MatType.CV_8U);
    }
}
