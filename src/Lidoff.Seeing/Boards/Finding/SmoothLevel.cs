using System.Numerics;
using Lidoff.Numbers;
using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Boards.Finding;

/// <summary>One size of a picture's brightness. Places count from its upper left corner, so that those of the picture are <see cref="Px"/> times as far.</summary>
/// <param name="Width">Width, px of its own.</param>
/// <param name="Height">Height, px of its own.</param>
/// <param name="Values">Brightness, row by row.</param>
/// <param name="Px">Pixels of the upright picture for one of its own.</param>
internal sealed record SmoothLevel(int Width, int Height, float[] Values, double Px)
{
    /// <summary>Brightness between pixels; outside, that of the edge.</summary>
    public float At(double x, double y)
    {
        var (fx, fy) = (Math.Clamp(x - 0.5, 0, Width - 1.001), Math.Clamp(y - 0.5, 0, Height - 1.001));
        var (ix, iy) = ((int)fx, (int)fy);
        var (tx, ty) = ((float)(fx - ix), (float)(fy - iy));
        var at = (iy * Width) + ix;
        var upper = Values[at] + (tx * (Values[at + 1] - Values[at]));
        var lower = Values[at + Width] + (tx * (Values[at + Width + 1] - Values[at + Width]));
        return upper + (ty * (lower - upper));
    }

    /// <summary>Half as large: means of two by two.</summary>
    public SmoothLevel Halved()
    {
        var (width, height) = (Width / 2, Height / 2);
        var values = new float[width * height];
        for (var y = 0; y < height; y++)
        {
            var (upper, lower) = (2 * y * Width, ((2 * y) + 1) * Width);
            for (var x = 0; x < width; x++)
            {
                values[(y * width) + x] = (Values[upper + (2 * x)] + Values[upper + (2 * x) + 1] + Values[lower + (2 * x)] + Values[lower + (2 * x) + 1]) / 4;
            }
        }

        return new(width, height, values, Px * 2);
    }

    /// <summary>Blurred by a normal curve. Products and sums stand in the same order on every machine, however many a vector holds.</summary>
    public SmoothLevel Blurred(double sigma)
    {
        var reach = (int)Math.Ceiling(2.6 * Guard.Positive(sigma));
        var kernel = Kernel(sigma, reach);
        var across = new float[Values.Length];
        var starts = Enumerable.Range(0, kernel.Length).ToArray();
        var padded = new float[Width + (2 * reach) + Vector<float>.Count];
        for (var y = 0; y < Height; y++)
        {
            var row = Values.AsSpan(y * Width, Width);
            padded.AsSpan(0, reach).Fill(row[0]);
            row.CopyTo(padded.AsSpan(reach));
            padded.AsSpan(reach + Width).Fill(row[^1]);
            Weighed(across.AsSpan(y * Width, Width), kernel, starts, padded);
        }

        var down = new float[Values.Length];
        for (var y = 0; y < Height; y++)
        {
            for (var k = 0; k < starts.Length; k++) starts[k] = Math.Clamp(y + k - reach, 0, Height - 1) * Width;
            Weighed(down.AsSpan(y * Width, Width), kernel, starts, across);
        }

        return this with { Values = down };
    }

    private static void Weighed(Span<float> into, float[] kernel, int[] starts, float[] from)
    {
        var x = 0;
        for (; x + Vector<float>.Count <= into.Length; x += Vector<float>.Count)
        {
            var sum = Vector<float>.Zero;
            for (var k = 0; k < kernel.Length; k++) sum += new Vector<float>(from, starts[k] + x) * kernel[k];
            sum.CopyTo(into[x..]);
        }

        for (; x < into.Length; x++)
        {
            var sum = 0f;
            for (var k = 0; k < kernel.Length; k++) sum += from[starts[k] + x] * kernel[k];
            into[x] = sum;
        }
    }

    private static float[] Kernel(double sigma, int reach)
    {
        var raw = Enumerable.Range(-reach, (2 * reach) + 1).Select(i => Elementary.Exp(-i * i / (2 * sigma * sigma))).ToArray();
        var sum = raw.Sum();
        return [.. raw.Select(value => (float)(value / sum))];
    }
}
