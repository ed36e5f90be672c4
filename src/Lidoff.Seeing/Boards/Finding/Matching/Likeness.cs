using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Measuring.Edges;

namespace Lidoff.Seeing.Boards.Finding.Matching;

/// <summary>How alike the pixels of two pictures are once one is laid on the other: their correlation over the part of the board that the marks reach, after slow changes of light are taken out. The marks themselves do not count: holes are alike on both sides.</summary>
internal static class Likeness
{
    private const int Places = 9000;

    /// <summary>−1 to 1; 0 where nothing can be said.</summary>
    public static double Of(SmoothLevel? first, SmoothLevel? second, Matrix3 map, IReadOnlyList<FoundMark> marks)
    {
        if (first is null || second is null) return 0;
        var view = new Projective("a", "b", map);
        var random = new SeedRandom(1);
        double n = 0, a = 0, b = 0, aa = 0, bb = 0, ab = 0;
        for (var i = 0; i < Places; i++)
        {
            // Between three of them, so that the table beside the board never counts: its edge is the same on both sides.
            var (u, v, w) = (1 + random.Below(1000), 1 + random.Below(1000), 1 + random.Below(1000));
            var (one, two, three) = (marks[random.Below(marks.Count)].At, marks[random.Below(marks.Count)].At, marks[random.Below(marks.Count)].At);
            var sum = (double)(u + v + w);
            var at = new PicturePoint(((u * one.X) + (v * two.X) + (w * three.X)) / sum, ((u * one.Y) + (v * two.Y) + (w * three.Y)) / sum);
            // Their lands reach to about twice their radius, and blur a little on.
            if (marks.Any(mark => mark.At.DistanceTo(at) < (2.2 * mark.RadiusPx) + (3 * first.Px))) continue;
            var to = view.Map(at);
            var (x, y) = (to.X / second.Px, to.Y / second.Px);
            if (!(x > 1 && y > 1 && x < second.Width - 1 && y < second.Height - 1)) continue;
            var (p, q) = (first.At(at.X / first.Px, at.Y / first.Px), second.At(x, y));
            (n, a, b, aa, bb, ab) = (n + 1, a + p, b + q, aa + (p * p), bb + (q * q), ab + (p * q));
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
