using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Measuring.Edges;

namespace Lidoff.Seeing.Boards.Finding.Matching;

/// <summary>How alike the pixels of two pictures are once one is laid on the other: their correlation over the part of the board that the marks reach, after slow changes of light are taken out.</summary>
internal static class Likeness
{
    private const int Grid = 90;

    /// <summary>−1 to 1; 0 where nothing can be said.</summary>
    public static double Of(SmoothLevel? first, SmoothLevel? second, Matrix3 map, IReadOnlyList<PicturePoint> marks)
    {
        if (first is null || second is null) return 0;
        var view = new Projective("a", "b", map);
        var (left, right, top, bottom) = (marks.Min(at => at.X), marks.Max(at => at.X), marks.Min(at => at.Y), marks.Max(at => at.Y));
        double n = 0, a = 0, b = 0, aa = 0, bb = 0, ab = 0;
        for (var i = 0; i < Grid; i++)
        {
            for (var j = 0; j < Grid; j++)
            {
                var at = new PicturePoint(left + ((right - left) * (i + 0.5) / Grid), top + ((bottom - top) * (j + 0.5) / Grid));
                var to = view.Map(at);
                var (x, y) = (to.X / second.Px, to.Y / second.Px);
                if (!(x > 1 && y > 1 && x < second.Width - 1 && y < second.Height - 1)) continue;
                var (p, q) = (first.At(at.X / first.Px, at.Y / first.Px), second.At(x, y));
                (n, a, b, aa, bb, ab) = (n + 1, a + p, b + q, aa + (p * p), bb + (q * q), ab + (p * q));
            }
        }

        if (n < 200) return 0;
        var (va, vb) = ((aa / n) - (a / n * (a / n)), (bb / n) - (b / n * (b / n)));
        return va <= 1e-6 || vb <= 1e-6 ? 0 : ((ab / n) - (a / n * (b / n))) / Math.Sqrt(va * vb);
    }

    /// <summary>What is left of a small copy without slow changes of light.</summary>
    public static SmoothLevel Sketch(GreyPicture grey)
    {
        var level = new SmoothLevel(grey.Width, grey.Height, grey.Values, grey.PxPerPx);
        while (Math.Max(level.Width, level.Height) > 600) level = level.Halved();
        var (fine, wide) = (level.Blurred(1.2), level.Blurred(12));
        return fine with { Values = [.. fine.Values.Zip(wide.Values, (a, b) => Math.Clamp(a - b, -60, 60))] };
    }
}
