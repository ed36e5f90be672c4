using Lidoff.Seeing.Vision;
using OpenCvSharp;

namespace Lidoff.Seeing.Composing;

/// <summary>What one tile's sheet looks like where it covers another's: only that part is worked on, since neighbours share a quarter.</summary>
internal sealed class Overlap : IDisposable
{
    // Less than this share of a tile is too little to tell anything by.
    private const double Least = 0.015;

    private Overlap(Rect box, Mat first, Mat second, Mat mask) => (Box, First, Second, Mask) = (box, first, second, mask);

    /// <summary>The part of the first sheet that may be covered.</summary>
    public Rect Box { get; }

    /// <summary>The first sheet there.</summary>
    public Mat First { get; }

    /// <summary>The second sheet laid on it.</summary>
    public Mat Second { get; }

    /// <summary>255 where the second covers it.</summary>
    public Mat Mask { get; }

    /// <summary>The overlap of two tiles at a place; null where there is next to none. Within <paramref name="within"/> of the first sheet where that is given.</summary>
    public static Overlap? Of(Tile first, Tile second, Similarity map, Rect? within = null)
    {
        var (w, h) = (second.Grey.Width, second.Grey.Height);
        var corners = new[] { map.Apply(0, 0), map.Apply(w, 0), map.Apply(0, h), map.Apply(w, h) };
        var whole = new Rect(0, 0, first.Grey.Width, first.Grey.Height);
        var (left, top) = (Floor(corners.Min(at => at.X)), Floor(corners.Min(at => at.Y)));
        var box = new Rect(left, top, Floor(corners.Max(at => at.X)) + 1 - left, Floor(corners.Max(at => at.Y)) + 1 - top) & (within ?? whole) & whole;
        if (box.Width < 40 || box.Height < 40 || (double)box.Width * box.Height < Least * whole.Width * whole.Height) return null;
        var moved = map with { X = map.X - box.X, Y = map.Y - box.Y };
        var laid = Warps.Warp(second.Grey, moved, box.Size, InterpolationFlags.Linear);
        using var all = new Mat(second.Grey.Size(), MatType.CV_8U, Scalar.All(255));
        return new(box, first.Grey[box], laid, Warps.Warp(all, moved, box.Size, InterpolationFlags.Nearest));
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        First.Dispose();
        Second.Dispose();
        Mask.Dispose();
    }

    private static int Floor(double value) => (int)Math.Floor(Math.Clamp(value, -1e6, 1e6));
}
