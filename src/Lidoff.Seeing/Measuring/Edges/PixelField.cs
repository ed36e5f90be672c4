using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Pictures;
using NetVips;

namespace Lidoff.Seeing.Measuring.Edges;

/// <summary>
/// Brightness of a rectangle of a picture at full resolution, upright, read between its pixels. Values are those of the file (0 to 255,
/// Rec. 601 luma), not those of light.
/// </summary>
internal sealed class PixelField
{
    // A hundredth of a step of 255: two bytes a pixel, and finer than any picture.
    private const float Steps = 100;

    private readonly ushort[] values;
    private readonly int left;
    private readonly int top;
    private readonly int width;
    private readonly int height;

    private PixelField(ushort[] values, int left, int top, int width, int height) => (this.values, this.left, this.top, this.width, this.height) = (values, left, top, width, height);

    /// <summary>A whole picture out of its brightness, row by row.</summary>
    public static PixelField Of(ReadOnlySpan<float> brightness, int width, int height)
    {
        var values = new ushort[brightness.Length];
        for (var i = 0; i < values.Length; i++) values[i] = (ushort)((Math.Clamp(brightness[i], 0, 255) * Steps) + 0.5f);
        return new(values, 0, 0, width, height);
    }

    /// <summary>The rectangle around places, with a margin. Throws what the picture library throws on a broken file.</summary>
    public static PixelField Read(string path, PictureHeader header, IReadOnlyCollection<PicturePoint> around, double margin)
    {
        var (x, y) = ((int)Math.Clamp(around.Min(at => at.X) - margin, 0, header.Width - 1), (int)Math.Clamp(around.Min(at => at.Y) - margin, 0, header.Height - 1));
        var (right, bottom) = ((int)Math.Clamp(around.Max(at => at.X) + margin + 1, x + 1, header.Width), (int)Math.Clamp(around.Max(at => at.Y) + margin + 1, y + 1, header.Height));
        using var stored = PictureFile.Stored(path, header);
        var (cutX, cutY, cutWidth, cutHeight) = PictureTurn.Stored(header.Orientation, stored.Width, stored.Height, x, y, right - x, bottom - y);
        using var cut = stored.Crop(cutX, cutY, cutWidth, cutHeight);
        using var small = PictureFile.SmallUpright(cut, header);
        var bytes = small.WriteToMemory<byte>();
        var bands = small.Bands;
        var values = new ushort[small.Width * small.Height];
        for (var i = 0; i < values.Length; i++)
        {
            var at = i * bands;
            values[i] = (ushort)((bands < 3 ? bytes[at] * Steps : ((299 * bytes[at]) + (587 * bytes[at + 1]) + (114 * bytes[at + 2])) / (1000 / Steps)) + 0.5f);
        }

        return new(values, x, y, small.Width, small.Height);
    }

    /// <summary>Whether a place lies inside, with the pixels around it that reading needs.</summary>
    public bool Holds(double x, double y) => x - left >= 2 && y - top >= 2 && x - left <= width - 2 && y - top <= height - 2;

    /// <summary>Brightness at a place of the upright picture, 0 to 255, by cubic convolution (Keys 1981, a = −1/2); beyond the rectangle that of its rim.</summary>
    public float At(double x, double y)
    {
        var (px, py) = (x - left - 0.5, y - top - 0.5);
        var (ix, iy) = ((int)Math.Floor(px), (int)Math.Floor(py));
        var (fx, fy) = ((float)(px - ix), (float)(py - iy));
        Span<float> across = [Outer(1 + fx), Inner(fx), Inner(1 - fx), Outer(2 - fx)];
        Span<float> down = [Outer(1 + fy), Inner(fy), Inner(1 - fy), Outer(2 - fy)];
        var sum = 0f;
        for (var j = 0; j < 4; j++)
        {
            var row = Math.Clamp(iy + j - 1, 0, height - 1) * width;
            var line = 0f;
            for (var i = 0; i < 4; i++) line += across[i] * values[row + Math.Clamp(ix + i - 1, 0, width - 1)];
            sum += down[j] * line;
        }

        return sum / Steps;
    }

    private static float Inner(float t) => (((1.5f * t) - 2.5f) * t * t) + 1;

    private static float Outer(float t) => (((((-0.5f * t) + 2.5f) * t) - 4) * t) + 2;
}
