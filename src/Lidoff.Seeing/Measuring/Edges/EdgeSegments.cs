using Lidoff.Numbers;

namespace Lidoff.Seeing.Measuring.Edges;

/// <summary>
/// Straight pieces of edges: from the steepest pixel down, neighbours whose brightness rises in nearly the same direction are taken
/// together, and a line with a bow is laid through each such region.
/// </summary>
internal static class EdgeSegments
{
    // Neighbours belong together within 14° of the region's direction.
    private const double Together = 0.25;

    // A step of brightness that grain and compression do not make.
    private const float LeastStep = 6;

    // Edges wider than this, root mean square in px, are bands of texture.
    private const double WidestEdge = 2.2;

    // A bow of more than 3 % of the length is a curve and no line, whatever the lens.
    private const double MostBow = 0.03;

    private const int Buckets = 256;

    /// <summary>Finds them.</summary>
    /// <param name="grey">The picture.</param>
    /// <param name="leastLength">Shortest piece, px.</param>
    public static List<EdgeSegment> Find(GreyPicture grey, double leastLength)
    {
        var (steps, angles) = Gradient(grey);
        var order = Steepest(steps);
        var taken = new bool[steps.Length];
        var region = new List<int>();
        var found = new List<EdgeSegment>();
        foreach (var seed in order)
        {
            if (taken[seed]) continue;
            Grow(seed, grey.Width, grey.Height, steps, angles, taken, region);
            if (region.Count >= leastLength && Line(region, steps, grey.Width) is { } line && line.Length >= leastLength) found.Add(line);
        }

        return found;
    }

    private static (float[] Steps, float[] Angles) Gradient(GreyPicture grey)
    {
        var (width, height) = (grey.Width, grey.Height);
        var (steps, angles) = (new float[width * height], new float[width * height]);
        for (var y = 1; y < height - 1; y++)
        {
            for (var x = 1; x < width - 1; x++)
            {
                // Scharr's weights: the direction is right to a fraction of a degree.
                var (a, b, c) = (grey.At(x - 1, y - 1), grey.At(x, y - 1), grey.At(x + 1, y - 1));
                var (d, f) = (grey.At(x - 1, y), grey.At(x + 1, y));
                var (g, h, i) = (grey.At(x - 1, y + 1), grey.At(x, y + 1), grey.At(x + 1, y + 1));
                var right = ((3 * (c + i - a - g)) + (10 * (f - d))) / 32;
                var down = ((3 * (g + i - a - c)) + (10 * (h - b))) / 32;
                var step = MathF.Sqrt((right * right) + (down * down));
                if (step < LeastStep) continue;
                var at = (y * width) + x;
                steps[at] = step;
                angles[at] = (float)Elementary.Atan2(down, right);
            }
        }

        return (steps, angles);
    }

    /// <summary>Pixels with a step, steepest first, by buckets so that the order is quick and fixed.</summary>
    private static int[] Steepest(float[] steps)
    {
        var counts = new int[Buckets + 1];
        foreach (var step in steps) if (step > 0) counts[Bucket(step)]++;
        var starts = new int[Buckets + 1];
        for (var i = Buckets - 1; i >= 0; i--) starts[i] = starts[i + 1] + counts[i + 1];
        var order = new int[starts[0] + counts[0]];
        for (var at = 0; at < steps.Length; at++) if (steps[at] > 0) order[starts[Bucket(steps[at])]++] = at;
        return order;
    }

    private static int Bucket(float step) => Math.Min(Buckets, (int)(step * 2));

    private static void Grow(int seed, int width, int height, float[] steps, float[] angles, bool[] taken, List<int> region)
    {
        region.Clear();
        region.Add(seed);
        taken[seed] = true;
        var (sumX, sumY) = Unit(angles[seed]);
        var direction = (double)angles[seed];
        for (var next = 0; next < region.Count; next++)
        {
            var (x, y) = (region[next] % width, region[next] / width);
            for (var dy = -1; dy <= 1; dy++)
            {
                for (var dx = -1; dx <= 1; dx++)
                {
                    var (nx, ny) = (x + dx, y + dy);
                    if (nx < 0 || ny < 0 || nx >= width || ny >= height) continue;
                    var at = (ny * width) + nx;
                    if (taken[at] || steps[at] <= 0 || Apart(angles[at], direction) > Together) continue;
                    taken[at] = true;
                    region.Add(at);
                    var (ux, uy) = Unit(angles[at]);
                    (sumX, sumY) = (sumX + ux, sumY + uy);
                    // Once a piece has its direction, more pixels change it no more than matters.
                    if (region.Count < 64 || region.Count % 16 == 0) direction = Elementary.Atan2(sumY, sumX);
                }
            }
        }
    }

    private static EdgeSegment? Line(List<int> region, float[] steps, int width)
    {
        var (w, mx, my) = (0.0, 0.0, 0.0);
        foreach (var at in region)
        {
            w += steps[at];
            mx += steps[at] * (at % width);
            my += steps[at] * (at / width);
        }

        (mx, my) = (mx / w, my / w);
        var (xx, xy, yy) = (0.0, 0.0, 0.0);
        foreach (var at in region)
        {
            var (x, y) = ((at % width) - mx, (at / width) - my);
            xx += steps[at] * x * x;
            xy += steps[at] * x * y;
            yy += steps[at] * y * y;
        }

        var angle = 0.5 * Elementary.Atan2(2 * xy, xx - yy);
        var (sin, cos) = (Elementary.Sin(angle), Elementary.Cos(angle));
        // A parabola across the line: offset, turn and bow by weighted least squares.
        var (least, most) = (double.PositiveInfinity, double.NegativeInfinity);
        Span<double> t = stackalloc double[5];
        Span<double> d = stackalloc double[3];
        var spread = 0.0;
        foreach (var at in region)
        {
            var (x, y) = ((at % width) - mx, (at / width) - my);
            var (along, across) = ((x * cos) + (y * sin), (y * cos) - (x * sin));
            (least, most) = (Math.Min(least, along), Math.Max(most, along));
            var (power, weight) = (1.0, (double)steps[at]);
            for (var k = 0; k < 5; k++, power *= along)
            {
                t[k] += weight * power;
                if (k < 3) d[k] += weight * power * across;
            }

            spread += weight * across * across;
        }

        var factor = PositiveMatrix.Factor(new[,] { { t[0], t[1], t[2] }, { t[1], t[2], t[3] }, { t[2], t[3], t[4] } });
        if (factor is null) return null;
        var fit = PositiveMatrix.Solve(factor, [d[0], d[1], d[2]]);
        var length = most - least;
        var middle = (least + most) / 2;
        var sagitta = fit[2] * length * length / 4;
        if (Math.Sqrt(spread / w) > WidestEdge + Math.Abs(sagitta) || Math.Abs(sagitta) > MostBow * length) return null;
        // The turn at the middle of the piece, not at its centre of weight.
        var turn = fit[1] + (2 * fit[2] * middle);
        var offset = fit[0] + (fit[1] * middle) + (fit[2] * middle * middle);
        return new(mx + (middle * cos) - (offset * sin) + 0.5, my + (middle * sin) + (offset * cos) + 0.5, angle + Elementary.Atan(turn), length, sagitta);
    }

    private static (double X, double Y) Unit(float angle) => (Elementary.Cos(angle), Elementary.Sin(angle));

    private static double Apart(float a, double b)
    {
        var apart = Math.Abs(a - b);
        return apart > Math.PI ? (2 * Math.PI) - apart : apart;
    }
}
