using Lidoff.Seeing.Rendering;
using OpenCvSharp;

namespace Lidoff.Seeing.Tests.Composing;

/// <summary>
/// A chip's moulded top under a lamp that goes round: grains of the compound, a worn laser mark whose grooves are barely another colour
/// than the body, pads and a hole beside it; each picture has its own fall-off of the lamp, its own glare, its own noise, and goes
/// through JPEG. The mark is seen by its slopes, and by their being rougher than the body.
/// </summary>
internal static class LightBench
{
    public const int Width = 640;
    public const int Height = 420;
    private const double Cap = 56;
    private static readonly string[] Lines = ["N52832", "QFAAE0", "2131AC"];

    /// <summary>1 in the middle of a stroke, 0 on the body.</summary>
    public static double Stroke(double x, double y)
    {
        for (var line = 0; line < Lines.Length; line++)
        {
            var (tx, ty) = ((x - 150) / Cap, (y - 90 - (line * Cap * 1.5)) / Cap);
            if (ty is < -0.4 or > 1.4) continue;
            var away = StrokeFont.Distance(Lines[line], tx, ty, 0.4) * Cap;
            if (away < 7) return Math.Clamp(1.5 - (away / 2.6), 0, 1);
        }

        return 0;
    }

    /// <summary>One picture: the lamp at <paramref name="degrees"/> (0 from the right, 90 from below), the camera shifted by so much.</summary>
    public static byte[] Picture(double degrees, int seed, double moveX = 0, double moveY = 0)
    {
        // A lamp 20 degrees above the board.
        var (lx, ly, lz) = (Math.Cos(degrees * Math.PI / 180) * 0.94, Math.Sin(degrees * Math.PI / 180) * 0.94, 0.34);
        using var sheet = new Mat(Height, Width, MatType.CV_32FC3);
        for (var py = 0; py < Height; py++)
        {
            for (var px = 0; px < Width; px++)
            {
                var (x, y) = (px + 0.5 + moveX, py + 0.5 + moveY);
                var (gx, gy) = (Depth(x + 0.7, y) - Depth(x - 0.7, y), Depth(x, y + 0.7) - Depth(x, y - 0.7));
                var length = Math.Sqrt((gx * gx) + (gy * gy) + 1);
                var lambert = Math.Max(0, ((-gx * lx) + (-gy * ly) + lz) / length);
                var stroke = Stroke(x, y);
                var (r, g, b) = Colour(x, y, stroke);
                // The lamp falls off across the board; glare where the body sends it into the camera.
                var lamp = 1 + (0.75 * (((x / Width) - 0.5) * lx * 2 + (((y / Height) - 0.5) * ly * 2)));
                var (hx, hy) = (320 + (230 * lx), 210 + (150 * ly));
                var glare = 46 * Math.Exp(-(((x - hx) * (x - hx)) + ((y - hy) * (y - hy))) / 5000) * (1 - (0.6 * stroke));
                sheet.Set(py, px, new Vec3f((float)((r * lambert * lamp * 2.6) + glare), (float)((g * lambert * lamp * 2.6) + glare), (float)((b * lambert * lamp * 2.6) + glare)));
            }
        }

        Cv2.GaussianBlur(sheet, sheet, default, 0.8);
        var pixels = new byte[Width * Height * 3];
        for (var y = 0; y < Height; y++)
        {
            for (var x = 0; x < Width; x++)
            {
                var value = sheet.At<Vec3f>(y, x);
                for (var band = 0; band < 3; band++) pixels[(((y * Width) + x) * 3) + band] = (byte)Math.Clamp(value[band] + (2.2 * Scatter.Normal(900 + seed, x, (y * 3) + band)) + 0.5, 0, 255);
            }
        }

        return pixels;
    }

    // Grooves a little deep, grains of the compound, a bump of the board round each pad.
    private static double Depth(double x, double y)
    {
        var (cell, row) = ((int)Math.Floor(x / 3), (int)Math.Floor(y / 3));
        var grain = Body(x, y) ? 0.16 * Scatter.Even(41, cell, row) : 0.05 * Scatter.Even(42, cell, row);
        return grain - (0.5 * Stroke(x, y));
    }

    private static bool Body(double x, double y) => x is > 110 and < 530 && y is > 50 and < 370;

    private static (double R, double G, double B) Colour(double x, double y, double stroke)
    {
        if (Body(x, y)) return (44 + (5 * stroke), 44 + (5 * stroke), 46 + (5 * stroke));
        var (dx, dy) = ((x % 46) - 23, (y % 41) - 20);
        if (Scatter.Even(43, (int)(x / 46), (int)(y / 41)) > 0.45 && (dx * dx) + (dy * dy) < 120) return (dx * dx) + (dy * dy) < 40 ? (30, 28, 26) : (196, 164, 82);
        return (30, 88, 52);
    }

    /// <summary>
    /// How far the mark stands out from the body around it, in standard deviations of either (d′), seen over a stroke's width: by its
    /// brightness or by how much goes on there, whichever shows it better, so that a groove which is only a bright and a dark edge counts.
    /// </summary>
    public static double Readable(Mat grey)
    {
        using var seen = new Mat();
        grey.ConvertTo(seen, MatType.CV_32F);
        Cv2.GaussianBlur(seen, seen, default, 1.2);
        using var around = new Mat();
        // Against its surroundings: a lamp's fall-off is not what hides a mark from an eye.
        Cv2.GaussianBlur(seen, around, default, 14);
        Cv2.Subtract(seen, around, seen);
        using var busy = seen.Mul(seen).ToMat();
        Cv2.GaussianBlur(busy, busy, default, 1.6);
        Cv2.Sqrt(busy, busy);
        return Math.Max(Apart(seen), Apart(busy));
    }

    private static double Apart(Mat seen)
    {
        List<double> marks = [], bodies = [];
        for (var y = 80; y < 340; y++)
        {
            for (var x = 140; x < 500; x++)
            {
                var stroke = Stroke(x + 0.5, y + 0.5);
                if (stroke > 0.95) marks.Add(seen.At<float>(y, x));
                else if (stroke <= 0 && Stroke(x - 3.5, y + 0.5) + Stroke(x + 4.5, y + 0.5) + Stroke(x + 0.5, y - 3.5) + Stroke(x + 0.5, y + 4.5) <= 0) bodies.Add(seen.At<float>(y, x));
            }
        }

        var (m, b) = (marks.Average(), bodies.Average());
        return Math.Abs(m - b) / Math.Sqrt((marks.Average(v => (v - m) * (v - m)) + bodies.Average(v => (v - b) * (v - b))) / 2);
    }
}
