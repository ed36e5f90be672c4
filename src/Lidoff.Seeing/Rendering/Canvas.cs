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

    /// <summary>Blurs by repeated narrow passes along rows and columns, which together are close to a normal curve.</summary>
    public void Blur(double sigma)
    {
        if (sigma <= 0) return;
        // The kernel (e, 1 − 2e, e) has variance 2e; as many passes as keep each variance at or below 0.5.
        var passes = (int)Math.Ceiling(sigma * sigma / 0.5);
        var variance = sigma * sigma / passes;
        var side = (float)(variance / 2);
        var line = new float[Math.Max(width, height) * 3];
        for (var pass = 0; pass < passes; pass++)
        {
            for (var y = 0; y < height; y++) Smooth(y * width * 3, 3, width, side, line);
            for (var x = 0; x < width; x++) Smooth(x * 3, width * 3, height, side, line);
        }
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
                    var value = values[(((y * width) + x) * 3) + band] + noise + (grain * 0.4 * Scatter.Normal(seed + 1 + band, x, y));
                    pixels[(((row * storedWidth) + column) * 3) + band] = (byte)Math.Clamp(Math.Round(value), 0, 255);
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

    private void Smooth(int start, int step, int count, float side, float[] line)
    {
        for (var i = 0; i < count; i++) values.AsSpan(start + (i * step), 3).CopyTo(line.AsSpan(i * 3));
        for (var i = 0; i < count; i++)
        {
            var (before, after) = (Math.Max(0, i - 1) * 3, Math.Min(count - 1, i + 1) * 3);
            for (var band = 0; band < 3; band++)
            {
                values[start + (i * step) + band] = ((1 - (2 * side)) * line[(i * 3) + band]) + (side * (line[before + band] + line[after + band]));
            }
        }
    }
}
