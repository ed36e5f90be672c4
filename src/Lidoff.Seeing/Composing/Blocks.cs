using OpenCvSharp;

namespace Lidoff.Seeing.Composing;

/// <summary>Finds blocks of one sheet again on another that lies nearly on it, to a fraction of a pixel.</summary>
internal static class Blocks
{
    // Below this the block is paper or noise, steps of 255.
    private const double LeastContrast = 2.5;

    // A block whose weaker direction holds less than this share of its edges slides along them.
    private const double LeastCorner = 0.06;

    /// <summary>Middles of blocks with corners in them, at most <paramref name="most"/>, spread over the sheet; where a mask is given only blocks wholly inside it.</summary>
    public static List<Point> Places(Mat sheet, int side, int most, Mat? mask = null)
    {
        using var across = new Mat();
        using var down = new Mat();
        Cv2.Sobel(sheet, across, MatType.CV_32F, 1, 0, scale: 0.125);
        Cv2.Sobel(sheet, down, MatType.CV_32F, 0, 1, scale: 0.125);
        using var xx = Mean(across, across, side);
        using var yy = Mean(down, down, side);
        using var xy = Mean(across, down, side);
        using var inside = new Mat();
        if (mask is not null) Cv2.BoxFilter(mask, inside, MatType.CV_32F, new(side, side), borderType: BorderTypes.Constant);
        var (width, height) = (sheet.Width, sheet.Height);
        var step = Math.Max(side / 2, (int)Math.Sqrt((double)width * height / (most * 2.5)));
        var found = new List<(Point At, double Weaker)>();
        for (var y = side / 2; y + (side / 2) < height; y += step)
        {
            for (var x = side / 2; x + (side / 2) < width; x += step)
            {
                if (mask is not null && inside.At<float>(y, x) < 254.9f) continue;
                var (a, b, c) = (xx.At<float>(y, x), xy.At<float>(y, x), yy.At<float>(y, x));
                var half = Math.Sqrt((((a - c) / 2) * ((a - c) / 2)) + (b * b));
                var (weaker, stronger) = (((a + c) / 2) - half, ((a + c) / 2) + half);
                if (weaker < 0.02 * LeastContrast * LeastContrast || weaker < LeastCorner * stronger) continue;
                found.Add((new(x, y), weaker));
            }
        }

        return [.. found.OrderByDescending(each => each.Weaker).ThenBy(each => each.At.Y).ThenBy(each => each.At.X).Take(most).Select(each => each.At)];
    }

    /// <summary>Where each block shows on the other sheet, searched <paramref name="reach"/> px around its own place; only those at least <paramref name="alike"/>.</summary>
    public static List<PointMatch> Match(Mat sheet, Mat other, IEnumerable<Point> places, int side, int reach, double alike)
    {
        var found = new List<PointMatch>();
        using var scores = new Mat();
        foreach (var at in places)
        {
            var box = new Rect(at.X - (side / 2), at.Y - (side / 2), side, side);
            var around = new Rect(box.X - reach, box.Y - reach, side + (2 * reach), side + (2 * reach));
            if (around.X < 0 || around.Y < 0 || around.Right > other.Width || around.Bottom > other.Height) continue;
            // A part of a sheet holds all of it until it is let go.
            using var search = other[around];
            using var block = sheet[box];
            Cv2.MatchTemplate(search, block, scores, TemplateMatchModes.CCoeffNormed);
            Cv2.MinMaxLoc(scores, out _, out var best, out _, out var peak);
            // At the border of what was searched the true place may lie beyond it.
            if (!(best >= alike) || peak.X == 0 || peak.Y == 0 || peak.X == scores.Width - 1 || peak.Y == scores.Height - 1) continue;
            var dx = Between(scores.At<float>(peak.Y, peak.X - 1), best, scores.At<float>(peak.Y, peak.X + 1));
            var dy = Between(scores.At<float>(peak.Y - 1, peak.X), best, scores.At<float>(peak.Y + 1, peak.X));
            // A box of even side lies around a pixel's corner, which is how places are counted here.
            found.Add(new(at.X, at.Y, at.X + peak.X - reach + dx, at.Y + peak.Y - reach + dy, best));
        }

        return found;
    }

    private static Mat Mean(Mat a, Mat b, int side)
    {
        var mean = new Mat();
        using var product = new Mat();
        Cv2.Multiply(a, b, product);
        Cv2.BoxFilter(product, mean, MatType.CV_32F, new(side, side), borderType: BorderTypes.Constant);
        return mean;
    }

    /// <summary>Top of the parabola through three neighbouring values, px from the middle one.</summary>
    public static double Between(double before, double middle, double after)
    {
        var bend = before - (2 * middle) + after;
        return bend >= -1e-12 ? 0 : Math.Clamp((before - after) / (2 * bend), -0.5, 0.5);
    }
}
