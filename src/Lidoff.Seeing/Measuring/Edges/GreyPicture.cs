using Lidoff.Seeing.Pictures;
using NetVips;

namespace Lidoff.Seeing.Measuring.Edges;

/// <summary>Brightness of a picture, 0 to 255, row by row, upright, made smaller by a factor that is told.</summary>
/// <param name="Width">Width, px of its own.</param>
/// <param name="Height">Height, px of its own.</param>
/// <param name="Values">Brightness.</param>
/// <param name="PxPerPx">Pixels of the upright picture for one of its own, one or more.</param>
internal sealed record GreyPicture(int Width, int Height, float[] Values, double PxPerPx)
{
    /// <summary>Reads one whose long side is about <paramref name="longest"/> px, between two thirds and one and a half times as much, or all of a smaller picture. Throws what the picture library throws on a broken file.</summary>
    public static GreyPicture Read(string path, PictureHeader header, int longest)
    {
        var side = Math.Max(header.Width, header.Height);
        using var stored = PictureFile.Stored(path, header, PictureFile.Shrinking(header, longest));
        // Whole-number averages of bytes: the same values on every machine.
        var factor = Math.Max(1, (int)Math.Round(Math.Max(stored.Width, stored.Height) / (double)longest));
        using var shrunk = factor > 1 ? stored.Shrink(factor, factor) : stored.Copy();
        using var small = PictureFile.SmallUpright(shrunk, header);
        return new(small.Width, small.Height, Luma.Of(small.WriteToMemory<byte>(), small.Bands), side / (double)Math.Max(small.Width, small.Height));
    }

    /// <summary>Half as large each way; an odd last row or column is left out.</summary>
    public GreyPicture Halved()
    {
        var (width, height) = (Width / 2, Height / 2);
        var values = new float[width * height];
        for (var i = 0; i < values.Length; i++)
        {
            var (x, y) = (2 * (i % width), 2 * (i / width));
            values[i] = (At(x, y) + At(x + 1, y) + At(x, y + 1) + At(x + 1, y + 1)) / 4;
        }

        return new(width, height, values, 2 * PxPerPx);
    }

    /// <summary>Brightness at a pixel.</summary>
    public float At(int x, int y) => Values[(y * Width) + x];

    /// <summary>Brightness between pixels; outside, that of the edge. Places count from the outer corner of the first pixel.</summary>
    public float Between(double x, double y)
    {
        var (px, py) = (Math.Clamp(x - 0.5, 0, Width - 1.001), Math.Clamp(y - 0.5, 0, Height - 1.001));
        var (ix, iy) = ((int)px, (int)py);
        var (fx, fy) = ((float)(px - ix), (float)(py - iy));
        return (At(ix, iy) * (1 - fx) * (1 - fy)) + (At(ix + 1, iy) * fx * (1 - fy)) + (At(ix, iy + 1) * (1 - fx) * fy) + (At(ix + 1, iy + 1) * fx * fy);
    }
}
