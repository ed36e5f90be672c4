using Lidoff.Numbers;
using Lidoff.Seeing.Reading.Finding;

namespace Lidoff.Seeing.Reading.Bands;

/// <summary>
/// The body of an axial part in a box around it: what differs from the rim of the box, along its long axis, as far as it is about as thick as its
/// thickest part; leads are thinner. The thresholds are choices of ours, set on rendered parts.
/// </summary>
internal static class AxialBody
{
    private const int LongSide = 200;

    // In CIELAB: least difference from the rim, and how many of its own spreads.
    private const double LeastDifference = 10;
    private const double Spreads = 4;

    // A lead is thinner than this share of the body.
    private const double ThickEnough = 0.55;

    // What is found fills that much of the box at least, and is that much longer than thick; otherwise the box itself is the body.
    private const double LeastOfBox = 0.02;
    private const double LeastLonger = 1.4;

    // Where the body is of the ground's colour its bands alone stand out: less than this share of it. It goes on beyond them by that share.
    private const double Solid = 0.8;
    private const double Beyond = 0.1;

    /// <summary>The body, its width along the axis; the box itself, along its longer side, where none stands out.</summary>
    public static PictureRegion Find(ColourPyramid picture, PictureRegion box)
    {
        var whole = box.Width >= box.Height ? box : new PictureRegion(box.Middle, box.Height, box.Width, Angles.Whole(box.Turn + (Math.PI / 2)));
        var scale = LongSide / Math.Max(box.Width, box.Height);
        var (columns, rows) = (Math.Max(8, (int)(box.Width * scale)), Math.Max(8, (int)(box.Height * scale)));
        var colours = picture.Sample(box, columns, rows).Select(colour => colour.Lab()).ToArray();
        var rim = Enumerable.Range(0, colours.Length).Where(i => i % columns < 2 || i % columns >= columns - 2 || i / columns < 2 || i / columns >= rows - 2).Select(i => colours[i]).ToList();
        var ground = (L: Median(rim.Select(c => c.L)), A: Median(rim.Select(c => c.A)), B: Median(rim.Select(c => c.B)));
        double Off((double L, double A, double B) c) => Math.Sqrt(((c.L - ground.L) * (c.L - ground.L)) + ((c.A - ground.A) * (c.A - ground.A)) + ((c.B - ground.B) * (c.B - ground.B)));
        var least = Math.Max(LeastDifference, Spreads * Median(rim.Select(Off)));
        var stands = colours.Select(c => Off(c) > least).ToArray();
        // Bands of the ground's colour cut a body in pieces, so that all of what stands out counts but for specks.
        var kept = Pictures.ConnectedPatches.Of(stands, columns).Where(patch => patch.Count >= 0.004 * colours.Length).SelectMany(patch => patch).Select(i => (X: (i % columns) + 0.5, Y: (i / columns) + 0.5)).ToList();
        if (kept.Count < LeastOfBox * colours.Length) return whole;
        var (mx, my) = (kept.Average(p => p.X), kept.Average(p => p.Y));
        double xx = kept.Sum(p => (p.X - mx) * (p.X - mx)), yy = kept.Sum(p => (p.Y - my) * (p.Y - my)), xy = kept.Sum(p => (p.X - mx) * (p.Y - my));
        var turn = 0.5 * Elementary.Atan2(2 * xy, xx - yy);
        var (c0, s0) = (Elementary.Cos(turn), Elementary.Sin(turn));
        var inside = kept.Select(p => (U: ((p.X - mx) * c0) + ((p.Y - my) * s0), V: ((p.Y - my) * c0) - ((p.X - mx) * s0))).ToList();
        // Thickness along the axis: how many px of what stands out lie in each step of one px.
        var from = (int)Math.Floor(inside.Min(p => p.U));
        var thick = new double[(int)Math.Ceiling(inside.Max(p => p.U)) - from + 1];
        foreach (var p in inside) thick[(int)Math.Floor(p.U) - from]++;
        var full = thick.Order().ElementAt((int)(0.85 * (thick.Length - 1)));
        var first = Array.FindIndex(thick, t => t >= ThickEnough * full);
        var last = Array.FindLastIndex(thick, t => t >= ThickEnough * full);
        var (length, height) = (last - first + 1.0, full);
        if (thick[first..(last + 1)].Average() < Solid * full)
        {
            (first, last) = (first - (int)(Beyond * length), last + (int)(Beyond * length));
            length = last - first + 1.0;
        }

        if (length < LeastLonger * height || length * height < LeastOfBox * colours.Length) return whole;
        var core = inside.Where(p => p.U >= from + first && p.U <= from + last + 1).ToList();
        if (core.Count == 0) return whole;
        var (u, v) = (from + first + (length / 2), Median(core.Select(p => p.V)));
        var px = box.Width / columns;
        var middle = box.At(((mx + (u * c0) - (v * s0)) / columns) - 0.5, ((my + (u * s0) + (v * c0)) / rows) - 0.5);
        return new(middle, length * px, height * px, Angles.Whole(box.Turn + turn));
    }

    internal static double Median(IEnumerable<double> values)
    {
        var all = values.Order().ToList();
        return all.Count % 2 == 1 ? all[all.Count / 2] : (all[(all.Count / 2) - 1] + all[all.Count / 2]) / 2;
    }
}
