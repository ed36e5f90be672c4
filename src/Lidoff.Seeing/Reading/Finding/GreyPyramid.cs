using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Reading.Finding;

/// <summary>
/// Brightness of a picture or of a part of it, 0 to 1, with copies of half the size for sampling from afar. Places are asked for in the
/// picture's own pixels; beyond its rim the rim goes on.
/// </summary>
public sealed class GreyPyramid
{
    private readonly List<Level> levels = [];
    private readonly double left, top, step;

    /// <summary>Takes over a raster.</summary>
    /// <param name="pixels">Row after row, 0 to 1.</param>
    /// <param name="width">Its width.</param>
    /// <param name="height">Its height.</param>
    /// <param name="left">Where its left rim lies in the picture, px.</param>
    /// <param name="top">Where its upper rim lies in the picture, px.</param>
    /// <param name="step">How many px of the picture one of its pixels is.</param>
    public GreyPyramid(float[] pixels, int width, int height, double left = 0, double top = 0, double step = 1)
    {
        Guard.That(width > 0 && height > 0 && Guard.NotNull(pixels).Length == width * height, "a raster as large as it says");
        levels.Add(new(pixels, width, height));
        (this.left, this.top, this.step) = (left, top, Guard.Positive(step));
    }

    /// <summary>The part of the picture it holds: left, top, width and height, px of the picture.</summary>
    public (double Left, double Top, double Width, double Height) Holds => (left, top, levels[0].Width * step, levels[0].Height * step);

    /// <summary>
    /// Samples a grid: the sample in column i and row j covers the parallelogram around <c>corner + (i + ½) right + (j + ½) down</c>. What is
    /// finer than the grid is averaged, not skipped.
    /// </summary>
    /// <param name="corner">Outer corner of the grid, in px of the picture.</param>
    /// <param name="right">From one column to the next, px of the picture.</param>
    /// <param name="down">From one row to the next.</param>
    /// <param name="columns">How many.</param>
    /// <param name="rows">How many.</param>
    /// <param name="cubic">Whether a cubic, and not a straight line, lies between pixels where the grid is finer than they are.</param>
    public float[] Sample(PicturePoint corner, (double X, double Y) right, (double X, double Y) down, int columns, int rows, bool cubic = false)
    {
        var longest = Math.Max(Length(right), Length(down)) / step;
        var depth = 0;
        while (longest >= 2 && depth < 12)
        {
            longest /= 2;
            depth++;
        }

        var level = Halved(ref depth);
        var scale = step * (1 << depth);
        // Steps of one to two pixels of this level: two taps along each side of the parallelogram stand for its area.
        var taps = Math.Max(Length(right), Length(down)) / scale > 1 ? 2 : 1;
        // The networks learnt from lost resolution brought back by a cubic; a straight line between pixels leaves facets that they take for strokes.
        var finer = cubic && depth == 0 && longest < 1;
        var grid = new float[columns * rows];
        for (var j = 0; j < rows; j++)
        {
            for (var i = 0; i < columns; i++)
            {
                var sum = 0.0;
                for (var a = 0; a < taps; a++)
                {
                    for (var b = 0; b < taps; b++)
                    {
                        var (u, v) = (i + ((a + 0.5) / taps), j + ((b + 0.5) / taps));
                        var (x, y) = ((corner.X + (u * right.X) + (v * down.X) - left) / scale, (corner.Y + (u * right.Y) + (v * down.Y) - top) / scale);
                        sum += finer ? level.Between(x, y) : level.At(x, y);
                    }
                }

                grid[(j * columns) + i] = (float)(sum / (taps * taps));
            }
        }

        return grid;
    }

    private static double Length((double X, double Y) v) => Math.Sqrt((v.X * v.X) + (v.Y * v.Y));

    private Level Halved(ref int depth)
    {
        lock (levels)
        {
            while (levels.Count <= depth && Math.Min(levels[^1].Width, levels[^1].Height) > 1) levels.Add(levels[^1].Half());
            depth = Math.Min(depth, levels.Count - 1);
            return levels[depth];
        }
    }

    private sealed record Level(float[] Pixels, int Width, int Height)
    {
        public double At(double x, double y)
        {
            var (fx, fy) = (Math.Clamp(x - 0.5, 0, Width - 1), Math.Clamp(y - 0.5, 0, Height - 1));
            var (x0, y0) = ((int)fx, (int)fy);
            var (x1, y1) = (Math.Min(x0 + 1, Width - 1), Math.Min(y0 + 1, Height - 1));
            var (dx, dy) = (fx - x0, fy - y0);
            double upper = (Pixels[(y0 * Width) + x0] * (1 - dx)) + (Pixels[(y0 * Width) + x1] * dx);
            double lower = (Pixels[(y1 * Width) + x0] * (1 - dx)) + (Pixels[(y1 * Width) + x1] * dx);
            return (upper * (1 - dy)) + (lower * dy);
        }

        /// <summary>Cubic convolution with a slope of -1/2 (R. G. Keys, IEEE Trans. ASSP 29, 1981), within what a pixel can be.</summary>
        public double Between(double x, double y)
        {
            var (fx, fy) = (Math.Clamp(x - 0.5, 0, Width - 1), Math.Clamp(y - 0.5, 0, Height - 1));
            var (x0, y0) = ((int)fx, (int)fy);
            Span<double> across = stackalloc double[4], down = stackalloc double[4];
            Weights(fx - x0, across);
            Weights(fy - y0, down);
            var sum = 0.0;
            for (var b = 0; b < 4; b++)
            {
                var row = Math.Clamp(y0 + b - 1, 0, Height - 1) * Width;
                for (var a = 0; a < 4; a++) sum += down[b] * across[a] * Pixels[row + Math.Clamp(x0 + a - 1, 0, Width - 1)];
            }

            return Math.Clamp(sum, 0, 1);
        }

        private static void Weights(double t, Span<double> w)
        {
            var (t2, t3) = (t * t, t * t * t);
            w[0] = (-0.5 * t3) + t2 - (0.5 * t);
            w[1] = (1.5 * t3) - (2.5 * t2) + 1;
            w[2] = (-1.5 * t3) + (2 * t2) + (0.5 * t);
            w[3] = (0.5 * t3) - (0.5 * t2);
        }

        // An odd last row or column is left out; the rim goes on beyond it.
        public Level Half()
        {
            var (w, h) = (Math.Max(1, Width / 2), Math.Max(1, Height / 2));
            var half = new float[w * h];
            for (var y = 0; y < h; y++)
            {
                for (var x = 0; x < w; x++)
                {
                    var at = (2 * y * Width) + (2 * x);
                    half[(y * w) + x] = (Pixels[at] + Pixels[at + 1] + Pixels[at + Width] + Pixels[at + Width + 1]) / 4;
                }
            }

            return new(half, w, h);
        }
    }
}
