using Lidoff.Numbers;

namespace Lidoff.Seeing.Rendering;

/// <summary>Three channels of brightness, 0 to 255, upright, row by row.</summary>
internal sealed class Canvas(int width, int height)
{
    private readonly float[] values = new float[width * height * 3];

    public int Width => width;

    public int Height => height;

    public void Blend(int x, int y, in Ink ink, double cover)
    {
        if (cover <= 0) return;
        var (at, part) = (((y * width) + x) * 3, (float)Math.Min(1, cover));
        values[at] += (ink.R - values[at]) * part;
        values[at + 1] += (ink.G - values[at + 1]) * part;
        values[at + 2] += (ink.B - values[at + 2]) * part;
    }

    /// <summary>Darkens evenly towards the side away from the light, and a little towards the corners as lenses do.</summary>
    public void Shade(double most, Lighting light)
    {
        for (var y = 0; y < height; y++)
        {
            for (var x = 0; x < width; x++)
            {
                var (right, down) = (((x + 0.5) / width) - 0.5, ((y + 0.5) / height) - 0.5);
                var away = light == Lighting.RakingTop ? down : right;
                var factor = (float)(1 - (most * away) - (most * 0.5 * ((right * right) + (down * down))));
                var at = ((y * width) + x) * 3;
                for (var band = 0; band < 3; band++) values[at + band] *= factor;
            }
        }
    }

    /// <summary>Blurs by repeated narrow passes along rows and columns, which together are close to a normal curve.</summary>
    public void Blur(double sigma, double toneExponent = 1)
    {
        if (sigma <= 0) return;
        if (toneExponent != 1) Curve(toneExponent);
        // The kernel (e, 1 − 2e, e) has variance 2e; as many passes as keep each variance at or below 0.5.
        var passes = (int)Math.Ceiling(sigma * sigma / 0.5);
        var side = (float)(sigma * sigma / passes / 2);
        var stride = width * 3;
        var (before, now) = (new float[stride], new float[stride]);
        for (var pass = 0; pass < passes; pass++)
        {
            for (var y = 0; y < height; y++) Row(values.AsSpan(y * stride, stride), now, side);
            values.AsSpan(0, stride).CopyTo(before);
            // Columns, a row at a time: the row above as it was, this one, and the next, which is still as it was.
            for (var y = 0; y < height; y++)
            {
                var row = values.AsSpan(y * stride, stride);
                var below = values.AsSpan(Math.Min(height - 1, y + 1) * stride, stride);
                row.CopyTo(now);
                for (var i = 0; i < stride; i++) row[i] = ((1 - (2 * side)) * now[i]) + (side * (before[i] + below[i]));
                (before, now) = (now, before);
            }
        }

        if (toneExponent != 1) Curve(1 / toneExponent);
    }

    private void Curve(double exponent)
    {
        for (var i = 0; i < values.Length; i++) values[i] = (float)(255 * Elementary.Pow(Math.Max(values[i], 1e-3) / 255, exponent));
    }

    /// <summary>Stored pixels for an orientation, with grain.</summary>
    public byte[] Stored(int orientation, double grain, int seed)
    {
        var swaps = orientation >= 5;
        var (storedWidth, storedHeight) = swaps ? (height, width) : (width, height);
        var pixels = new byte[width * height * 3];
        for (var row = 0; row < storedHeight; row++)
        {
            for (var column = 0; column < storedWidth; column++)
            {
                var (x, y) = Upright(orientation, column, row);
                var noise = grain * Scatter.Normal(seed, x, y);
                for (var band = 0; band < 3; band++)
                {
                    var value = values[(((y * width) + x) * 3) + band] + noise;
                    pixels[(((row * storedWidth) + column) * 3) + band] = (byte)Math.Clamp((int)(value + 0.5), 0, 255);
                }
            }
        }

        return pixels;
    }

    /// <summary>Which upright pixel lies at a stored one (Exif 2.32, tag 0x0112).</summary>
    private (int X, int Y) Upright(int orientation, int column, int row) => orientation switch
    {
        2 => (width - 1 - column, row),
        3 => (width - 1 - column, height - 1 - row),
        4 => (column, height - 1 - row),
        5 => (row, column),
        6 => (width - 1 - row, column),
        7 => (width - 1 - row, height - 1 - column),
        8 => (row, height - 1 - column),
        _ => (column, row),
    };

    private static void Row(Span<float> row, float[] copy, float side)
    {
        row.CopyTo(copy);
        for (var i = 0; i < row.Length; i++)
        {
            var (before, after) = (i < 3 ? i : i - 3, i + 3 < row.Length ? i + 3 : i);
            row[i] = ((1 - (2 * side)) * copy[i]) + (side * (copy[before] + copy[after]));
        }
    }
}
