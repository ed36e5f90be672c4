using Lidoff.Evidence.Working;
using Lidoff.Seeing.Vision;
using OpenCvSharp;

namespace Lidoff.Seeing.Composing;

/// <summary>
/// Puts tiles together in two bands: what is coarse changes over the whole overlap, so that no seam shows, what is fine over a narrow one,
/// so that a part seen from two sides does not stand there twice. Strip by strip; the result and the tiles are what is in memory.
/// </summary>
internal static class TileBlending
{
    private const int Strip = 384;
    private const int Grid = 16;

    // Coarser than this share of a tile's width is blended widely.
    private const double Coarse = 0.02;

    // The higher, the narrower the fine band's seam.
    private const int Narrow = 12;

    /// <summary>Blends onto a sheet of a size whose corner lies at <paramref name="left"/>, <paramref name="top"/> of the first tile's frame. Bare places are black.</summary>
    public static Mat Blend(IReadOnlyList<LaidTile> laid, int left, int top, Size size, IJobReport report)
    {
        var sheet = new Mat(size, MatType.CV_8UC3, Scalar.All(0));
        var coarse = laid.Select(each => Low(each.Tile.Colour)).ToList();
        try
        {
            for (var y = 0; y < size.Height; y += Strip)
            {
                report.Stop.ThrowIfCancellationRequested();
                report.Say((size.Height + y) / Strip, 2 * size.Height / Strip, ComposingSentences.Blending());
                using var strip = sheet[new Rect(0, y, size.Width, Math.Min(Strip, size.Height - y))];
                Fill(strip, laid, coarse, left, top + y);
            }
        }
        finally
        {
            coarse.ForEach(each => each.Dispose());
        }

        return sheet;
    }

    private static Mat Low(Mat colour)
    {
        var scale = Math.Max(4, Coarse * colour.Width);
        return WideBlurs.Reduced(colour, scale, Math.Max(1, (int)(scale / 3)));
    }

    private static void Fill(Mat strip, IReadOnlyList<LaidTile> laid, List<Mat> coarse, int left, int top)
    {
        using var fine = new Mat(strip.Size(), MatType.CV_32FC3, Scalar.All(0));
        using var wide = new Mat(strip.Size(), MatType.CV_32FC3, Scalar.All(0));
        using var fineWeight = new Mat(strip.Size(), MatType.CV_32F, Scalar.All(1e-37));
        using var wideWeight = new Mat(strip.Size(), MatType.CV_32F, Scalar.All(1e-37));
        for (var k = 0; k < laid.Count; k++)
        {
            var box = laid[k].Box();
            var (x0, y0) = (Math.Max(0, (int)Math.Floor(box.Left) - left - 2), Math.Max(0, (int)Math.Floor(box.Top) - top - 2));
            var (x1, y1) = (Math.Min(strip.Width, (int)Math.Ceiling(box.Right) - left + 2), Math.Min(strip.Height, (int)Math.Ceiling(box.Bottom) - top + 2));
            if (x1 - x0 < 2 || y1 - y0 < 1) continue;
            var part = new Rect(x0, y0, x1 - x0, y1 - y0);
            using var f = fine[part];
            using var w = wide[part];
            using var fw = fineWeight[part];
            using var ww = wideWeight[part];
            Add(laid[k], coarse[k], left + x0, top + y0, f, w, fw, ww);
        }

        Divide(fine, fineWeight);
        Divide(wide, wideWeight);
        Cv2.Add(fine, wide, fine);
        fine.ConvertTo(strip, MatType.CV_8U);
    }

    private static void Add(LaidTile laid, Mat coarse, int left, int top, Mat fine, Mat wide, Mat fineWeight, Mat wideWeight)
    {
        using var places = Places(laid, left, top, fine.Size());
        using var seen = new Mat();
        Cv2.Remap(laid.Tile.Colour, seen, places, new Mat(), InterpolationFlags.Cubic, BorderTypes.Replicate);
        using var lowPlaces = new Mat();
        // From the middle of a pixel to the middle of a coarse one.
        var (sx, sy) = ((double)coarse.Width / laid.Tile.Width, (double)coarse.Height / laid.Tile.Height);
        Cv2.Multiply(places, new Scalar(sx, sy), lowPlaces);
        Cv2.Add(lowPlaces, new Scalar((0.5 * sx) - 0.5, (0.5 * sy) - 0.5), lowPlaces);
        using var low = new Mat();
        Cv2.Remap(coarse, low, lowPlaces, new Mat(), InterpolationFlags.Linear, BorderTypes.Replicate);
        using var high = new Mat();
        Cv2.Subtract(seen, low, high, dtype: MatType.CV_32F);
        var (rows, width, height) = (fine.Rows, laid.Tile.Width, laid.Tile.Height);
        for (var y = 0; y < rows; y++)
        {
            var at = places.RowSpan<Vec2f>(y);
            var f = fine.RowSpan<Vec3f>(y);
            var c = wide.RowSpan<Vec3f>(y);
            var fw = fineWeight.RowSpan<float>(y);
            var cw = wideWeight.RowSpan<float>(y);
            var h = high.RowSpan<Vec3f>(y);
            var l = low.RowSpan<Vec3f>(y);
            for (var x = 0; x < at.Length; x++)
            {
                var (u, v) = (at[x].Item0 + 0.5f, at[x].Item1 + 0.5f);
                var inside = Math.Min(Math.Min(u, width - u) / width, Math.Min(v, height - v) / height) * 2;
                if (inside <= 0) continue;
                // Towards a tile's rim both weights fall, but never so far that a lone tile's would be lost in a float.
                inside = Math.Max(inside, 0.004f);
                var (broad, narrow) = (inside, inside);
                for (var i = 1; i < Narrow; i++) narrow *= inside;
                f[x] = new(f[x].Item0 + (narrow * h[x].Item0), f[x].Item1 + (narrow * h[x].Item1), f[x].Item2 + (narrow * h[x].Item2));
                c[x] = new(c[x].Item0 + (broad * l[x].Item0), c[x].Item1 + (broad * l[x].Item1), c[x].Item2 + (broad * l[x].Item2));
                fw[x] += narrow;
                cw[x] += broad;
            }
        }
    }

    /// <summary>For each pixel the place of the tile it shows, from the middle of the tile's first pixel; worked out on a coarse grid, which a bend of hundredths allows.</summary>
    private static Mat Places(LaidTile laid, int left, int top, Size size)
    {
        var (columns, rows) = ((size.Width / Grid) + 3, (size.Height / Grid) + 3);
        using var grid = new Mat(rows, columns, MatType.CV_32FC2);
        for (var row = 0; row < rows; row++)
        {
            for (var column = 0; column < columns; column++)
            {
                // A grid cell's middle is where enlarging puts its value.
                var (x, y) = laid.From(left + ((column - 0.5) * Grid), top + ((row - 0.5) * Grid));
                grid.Set(row, column, new Vec2f((float)(x - 0.5), (float)(y - 0.5)));
            }
        }

        using var all = new Mat();
        Cv2.Resize(grid, all, new(columns * Grid, rows * Grid), 0, 0, InterpolationFlags.Linear);
        using var part = all[new Rect(Grid, Grid, size.Width, size.Height)];
        return part.Clone();
    }

    private static void Divide(Mat sum, Mat weight)
    {
        using var three = new Mat();
        Cv2.CvtColor(weight, three, ColorConversionCodes.GRAY2BGR);
        Cv2.Divide(sum, three, sum);
    }
}
