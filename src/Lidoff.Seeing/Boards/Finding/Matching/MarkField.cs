using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Boards.Finding.Matching;

/// <summary>The marks of one picture with quick answers: how far they reach, and whether one lies near a place.</summary>
internal sealed class MarkField
{
    private const int Cells = 320;

    private readonly bool[] near = new bool[Cells * Cells];
    private readonly double left;
    private readonly double top;
    private readonly double cell;

    public MarkField(PictureMarks picture)
    {
        (Marks, Frame) = (picture.Marks, picture.Frame);
        left = Marks.Min(mark => mark.At.X);
        top = Marks.Min(mark => mark.At.Y);
        var (wide, high) = (Marks.Max(mark => mark.At.X) - left, Marks.Max(mark => mark.At.Y) - top);
        Extent = Math.Max(1, Math.Sqrt((wide * wide) + (high * high)));
        cell = Extent / (Cells - 24);
        (left, top) = (left - (12 * cell), top - (12 * cell));
    }

    /// <summary>The marks, those that stand out most first.</summary>
    public IReadOnlyList<FoundMark> Marks { get; }

    /// <summary>The picture's size.</summary>
    public Measuring.PictureFrame Frame { get; }

    /// <summary>Diagonal of the box around all of them, px.</summary>
    public double Extent { get; }

    /// <summary>Marks the cells that lie within a share of <see cref="Extent"/> of a mark.</summary>
    public void Paint(double share)
    {
        var reach = (int)Math.Ceiling(share * Extent / cell);
        foreach (var mark in Marks)
        {
            var (cx, cy) = ((int)((mark.At.X - left) / cell), (int)((mark.At.Y - top) / cell));
            for (var y = Math.Max(0, cy - reach); y <= Math.Min(Cells - 1, cy + reach); y++)
            {
                for (var x = Math.Max(0, cx - reach); x <= Math.Min(Cells - 1, cx + reach); x++) if (((x - cx) * (x - cx)) + ((y - cy) * (y - cy)) <= reach * reach) near[(y * Cells) + x] = true;
            }
        }
    }

    /// <summary>True where a mark lies near.</summary>
    public bool Near(double x, double y)
    {
        var (cx, cy) = ((x - left) / cell, (y - top) / cell);
        return cx >= 0 && cy >= 0 && cx < Cells && cy < Cells && near[((int)cy * Cells) + (int)cx];
    }

    /// <summary>True where two marks may be one place, the second picture showing things <paramref name="scale"/> times as large.</summary>
    public static bool Alike(FoundMark a, FoundMark b, double scale)
    {
        if ((a.Sort == MarkSort.Bright) != (b.Sort == MarkSort.Bright)) return false;
        var ratio = b.RadiusPx / (a.RadiusPx * scale);
        return ratio is > 0.58 and < 1.72;
    }

    /// <summary>Whether the place lies in the picture.</summary>
    public bool Holds(PicturePoint at) => Frame.Holds(at);
}
