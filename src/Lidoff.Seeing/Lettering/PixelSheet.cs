using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Pictures;
using NetVips;

namespace Lidoff.Seeing.Lettering;

/// <summary>
/// A sheet of pixels that pictures are laid on and strokes are drawn on. Plain arithmetic: a stroke covers a pixel by the distance of
/// the pixel's centre from it, so the same drawing gives the same pixels on every machine, without any font.
/// </summary>
public sealed class PixelSheet
{
    /// <summary>Most pixels of a sheet (120 MB).</summary>
    public const long MostPixels = 40_000_000;

    private readonly byte[] pixels;

    /// <summary>A sheet of one colour, 0xRRGGBB.</summary>
    public PixelSheet(int width, int height, int ground)
    {
        Guard.That(width > 0 && height > 0 && (long)width * height <= MostPixels, "a sheet above zero and of 40 megapixels at most");
        (Width, Height, pixels) = (width, height, new byte[width * height * 3]);
        Fill(0, 0, width, height, ground);
    }

    /// <summary>Width, px.</summary>
    public int Width { get; }

    /// <summary>Height, px.</summary>
    public int Height { get; }

    /// <summary>Lays a picture down with its top left corner at (x, y); what would hang over is cut off.</summary>
    public void Lay(ShownPicture picture, int x, int y)
    {
        Vips.Start();
        using var stored = Image.JpegloadBuffer(picture.Jpeg);
        using var image = stored.Bands == 3 ? stored.Copy() : stored.Colourspace(Enums.Interpretation.Srgb);
        var values = image.WriteToMemory<byte>();
        var columns = Math.Min(image.Width, Width - x);
        for (var row = 0; row < Math.Min(image.Height, Height - y); row++)
        {
            Array.Copy(values, row * image.Width * 3, pixels, (((y + row) * Width) + x) * 3, columns * 3);
        }
    }

    /// <summary>Fills a rectangle with one colour.</summary>
    public void Fill(double x, double y, double width, double height, int ink)
    {
        var (left, right) = (Math.Max(0, (int)Math.Round(x)), Math.Min(Width, (int)Math.Round(x + width)));
        for (var row = Math.Max(0, (int)Math.Round(y)); row < Math.Min(Height, (int)Math.Round(y + height)); row++)
        {
            for (var at = ((row * Width) + left) * 3; at < ((row * Width) + right) * 3; at += 3)
            {
                (pixels[at], pixels[at + 1], pixels[at + 2]) = ((byte)(ink >> 16), (byte)(ink >> 8), (byte)ink);
            }
        }
    }

    /// <summary>Draws strokes with a round pen. Strokes of one call that lie over each other cover like one.</summary>
    public void Draw(IReadOnlyList<LetterStroke> strokes, double pen, int ink)
    {
        Guard.Positive(pen);
        var points = strokes.SelectMany(stroke => stroke.Points).ToList();
        if (points.Count == 0) return;
        var reach = (pen / 2) + 1;
        var (left, top) = (Inside(points.Min(point => point.X) - reach, Width), Inside(points.Min(point => point.Y) - reach, Height));
        var (right, bottom) = (Inside(points.Max(point => point.X) + reach, Width), Inside(points.Max(point => point.Y) + reach, Height));
        if (right <= left || bottom <= top) return;
        var cover = new float[(right - left) * (bottom - top)];
        foreach (var stroke in strokes)
        {
            for (var i = 1; i < stroke.Points.Count; i++) Cover(cover, left, top, right, bottom, stroke.Points[i - 1], stroke.Points[i], pen / 2);
        }

        for (var row = top; row < bottom; row++)
        {
            for (var column = left; column < right; column++)
            {
                var part = cover[((row - top) * (right - left)) + column - left];
                if (part > 0) Blend(((row * Width) + column) * 3, ink, part);
            }
        }
    }

    /// <summary>The sheet as PNG without any metadata.</summary>
    public byte[] Png()
    {
        Vips.Start();
        using var image = Image.NewFromMemory(pixels, Width, Height, 3, Enums.BandFormat.Uchar);
        using var coloured = image.Copy(interpretation: Enums.Interpretation.Srgb);
        return coloured.PngsaveBuffer(compression: 6, keep: Enums.ForeignKeep.None);
    }

    private static int Inside(double value, int side) => Math.Clamp((int)Math.Floor(value), 0, side);

    private static void Cover(float[] cover, int left, int top, int right, int bottom, PicturePoint from, PicturePoint to, double radius)
    {
        var (dx, dy) = (to.X - from.X, to.Y - from.Y);
        var length = (dx * dx) + (dy * dy);
        var reach = radius + 1;
        var last = Math.Min(bottom - 1, (int)Math.Ceiling(Math.Max(from.Y, to.Y) + reach));
        for (var row = Math.Max(top, (int)Math.Floor(Math.Min(from.Y, to.Y) - reach)); row <= last; row++)
        {
            // Only the columns that the line can reach in this row: a long slanting leader is a thin band, not a box.
            var (first, end) = Columns(from, to, row + 0.5, reach, left, right);
            for (var column = first; column < end; column++)
            {
                var (px, py) = (column + 0.5 - from.X, row + 0.5 - from.Y);
                var along = length > 0 ? Math.Clamp(((px * dx) + (py * dy)) / length, 0, 1) : 0;
                var (ex, ey) = (px - (along * dx), py - (along * dy));
                var part = (float)Math.Clamp(0.5 + radius - Math.Sqrt((ex * ex) + (ey * ey)), 0, 1);
                ref var there = ref cover[((row - top) * (right - left)) + column - left];
                if (part > there) there = part;
            }
        }
    }

    private static (int First, int End) Columns(PicturePoint from, PicturePoint to, double y, double reach, int left, int right)
    {
        var (low, high) = (Math.Min(from.X, to.X), Math.Max(from.X, to.X));
        if (Math.Abs(to.Y - from.Y) > 1e-9)
        {
            var slope = (to.X - from.X) / (to.Y - from.Y);
            var (one, other) = (from.X + (slope * (y - reach - from.Y)), from.X + (slope * (y + reach - from.Y)));
            (low, high) = (Math.Max(low, Math.Min(one, other)), Math.Min(high, Math.Max(one, other)));
        }

        return (Math.Clamp((int)Math.Floor(low - reach), left, right), Math.Clamp((int)Math.Ceiling(high + reach) + 1, left, right));
    }

    private void Blend(int at, int ink, float part)
    {
        for (var band = 0; band < 3; band++)
        {
            var aim = (ink >> (16 - (8 * band))) & 0xFF;
            pixels[at + band] = (byte)Math.Round(pixels[at + band] + ((aim - pixels[at + band]) * part));
        }
    }
}
