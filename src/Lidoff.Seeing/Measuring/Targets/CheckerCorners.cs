using Lidoff.Numbers;
using Lidoff.Seeing.Boards.Finding;

namespace Lidoff.Seeing.Measuring.Targets;

/// <summary>
/// Places where two dark and two light squares meet: saddles of the brightness around which a ring goes dark, light, dark, light. No turn and
/// no slant is assumed. Afterwards each is placed to a part of a pixel by the rule that every step of brightness points past it
/// (Förstner and Gülch, Interlaken 1987).
/// </summary>
internal static class CheckerCorners
{
    private const double Blur = 1.2;
    private const int Ring = 16;
    private const double RingPx = 4;

    // Brightness between dark and light squares at which a worn print still shows; grain of 6 makes about 1.5 after the blur.
    private const float LeastContrast = 14;

    // The saddle of a corner of that contrast, blurred like a soft lens: contrast / (π σ²), squared.
    private const float LeastSaddle = 1.2f;

    private const int Most = 30_000;

    private static readonly (double Cos, double Sin)[] Around = [.. Enumerable.Range(0, Ring).Select(i => (Elementary.Cos(2 * Math.PI * i / Ring), Elementary.Sin(2 * Math.PI * i / Ring)))];

    /// <summary>Corners of one size of the picture, px of that size, from above.</summary>
    public static List<GridPoint> Find(SmoothLevel level)
    {
        var smooth = level.Blurred(Blur);
        var (width, height, v) = (smooth.Width, smooth.Height, smooth.Values);
        var saddle = new float[v.Length];
        for (var y = 1; y < height - 1; y++)
        {
            for (var x = 1; x < width - 1; x++)
            {
                var at = (y * width) + x;
                var xx = v[at + 1] - (2 * v[at]) + v[at - 1];
                var yy = v[at + width] - (2 * v[at]) + v[at - width];
                var xy = (v[at + width + 1] - v[at + width - 1] - v[at - width + 1] + v[at - width - 1]) / 4;
                saddle[at] = (xy * xy) - (xx * yy);
            }
        }

        var found = new List<(float Saddle, GridPoint Point)>();
        const int edge = (int)RingPx + 2;
        for (var y = edge; y < height - edge; y++)
        {
            for (var x = edge; x < width - edge; x++)
            {
                var here = saddle[(y * width) + x];
                if (here < LeastSaddle || !Peak(saddle, width, x, y, here) || Corner(smooth, x, y) is not { } corner) continue;
                found.Add((here, corner));
            }
        }

        if (found.Count > Most) found = [.. found.OrderByDescending(each => each.Saddle).Take(Most).OrderBy(each => each.Point.Y).ThenBy(each => each.Point.X)];
        return found.ConvertAll(each => each.Point);
    }

    private static bool Peak(float[] saddle, int width, int x, int y, float here)
    {
        for (var dy = -2; dy <= 2; dy++)
        {
            for (var dx = -2; dx <= 2; dx++)
            {
                var other = saddle[((y + dy) * width) + x + dx];
                if (other > here || (other == here && (dy < 0 || (dy == 0 && dx < 0)))) return false;
            }
        }

        return true;
    }

    /// <summary>The saddle's own place, where the ring about it changes four times and its opposite sides are alike; null elsewhere.</summary>
    private static GridPoint? Corner(SmoothLevel smooth, int x, int y)
    {
        var (width, v, at) = (smooth.Width, smooth.Values, (y * smooth.Width) + x);
        var (gx, gy) = ((v[at + 1] - v[at - 1]) / 2, (v[at + width] - v[at - width]) / 2);
        var (xx, yy) = (v[at + 1] - (2 * v[at]) + v[at - 1], v[at + width] - (2 * v[at]) + v[at - width]);
        var xy = (v[at + width + 1] - v[at + width - 1] - v[at - width + 1] + v[at - width - 1]) / 4;
        var bent = (xx * yy) - (xy * xy);
        var (mx, my) = (((xy * gy) - (yy * gx)) / bent, ((xy * gx) - (xx * gy)) / bent);
        if (Math.Abs(mx) > 1.5 || Math.Abs(my) > 1.5) return null;
        var (cx, cy) = (x + 0.5 + mx, y + 0.5 + my);
        Span<float> ring = stackalloc float[Ring];
        var (low, high) = (float.MaxValue, float.MinValue);
        for (var i = 0; i < Ring; i++)
        {
            ring[i] = smooth.At(cx + (RingPx * Around[i].Cos), cy + (RingPx * Around[i].Sin));
            (low, high) = (Math.Min(low, ring[i]), Math.Max(high, ring[i]));
        }

        if (high - low < LeastContrast) return null;
        var (middle, changes, unlike, light) = ((low + high) / 2, 0, 0f, 0);
        var (cos, sin) = (0.0, 0.0);
        for (var i = 0; i < Ring; i++)
        {
            if (ring[i] > middle) light++;
            if (ring[i] > middle != ring[(i + 1) % Ring] > middle) changes++;
            if (i < Ring / 2) unlike += Math.Abs(ring[i] - ring[i + (Ring / 2)]);
            // Twice the direction: dark sides count where they are.
            var (c, s) = Around[2 * i % Ring];
            (cos, sin) = (cos - (ring[i] * c), sin - (ring[i] * s));
        }

        return changes == 4 && unlike < 0.25f * (Ring / 2) * (high - low) && light is > Ring / 5 and < Ring - (Ring / 5)
            ? new(cx, cy, Elementary.Atan2(sin, cos), 0)
            : null;
    }

    /// <summary>How much of the difference between dark and light is there a sixth of a step from a corner already, as a share of that at two fifths of one.</summary>
    public static double Nearness(SmoothLevel level, double x, double y, double step)
    {
        var (near, far) = (Contrast(Math.Max(1.5, 0.17 * step)), Contrast(0.4 * step));
        return far > 0 ? near / far : 0;

        double Contrast(double radius)
        {
            var (cos, sin) = (0.0, 0.0);
            for (var i = 0; i < Ring; i++)
            {
                var value = level.At(x + (radius * Around[i].Cos), y + (radius * Around[i].Sin));
                var (c, s) = Around[2 * i % Ring];
                (cos, sin) = (cos + (value * c), sin + (value * s));
            }

            return Math.Sqrt((cos * cos) + (sin * sin));
        }
    }

    /// <summary>The corner near a place to a part of a pixel, by the steps within <paramref name="reach"/> px of it; null where they do not settle.</summary>
    public static (double X, double Y)? Place(SmoothLevel level, double x, double y, double reach)
    {
        var (startX, startY) = (x, y);
        var n = (int)Math.Ceiling(reach);
        for (var round = 0; round < 12; round++)
        {
            var (a, b, c, p, q) = (0.0, 0.0, 0.0, 0.0, 0.0);
            for (var j = -n; j <= n; j++)
            {
                for (var i = -n; i <= n; i++)
                {
                    var (px, py) = (x + i, y + j);
                    var weight = Elementary.Exp(-2.0 * ((i * i) + (j * j)) / (reach * reach));
                    var gx = level.At(px + 1, py) - level.At(px - 1, py);
                    var gy = level.At(px, py + 1) - level.At(px, py - 1);
                    var (xx, xy, yy) = (weight * gx * gx, weight * gx * gy, weight * gy * gy);
                    (a, b, c) = (a + xx, b + xy, c + yy);
                    (p, q) = (p + (xx * i) + (xy * j), q + (xy * i) + (yy * j));
                }
            }

            var det = (a * c) - (b * b);
            if (!(det > 1e-9 * (a + c) * (a + c))) return null;
            var (dx, dy) = (((c * p) - (b * q)) / det, ((a * q) - (b * p)) / det);
            (x, y) = (x + dx, y + dy);
            if (Math.Abs(x - startX) > reach || Math.Abs(y - startY) > reach) return null;
            if (Math.Abs(dx) + Math.Abs(dy) < 0.002) break;
        }

        return (x, y);
    }
}
