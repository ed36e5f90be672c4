using Lidoff.Numbers;
using Lidoff.Seeing.Measuring.Edges;

namespace Lidoff.Seeing.Boards.Finding;

/// <summary>What hangs together, dark or bright: samples that count from a place of the picture.</summary>
/// <param name="Pixels">Its samples.</param>
/// <param name="Whole">True where it ends within what was looked at.</param>
internal sealed record InkShape(IReadOnlyList<(int X, int Y)> Pixels, bool Whole)
{
    /// <summary>Middle of the box around it.</summary>
    public double X { get; } = (Pixels.Min(pixel => pixel.X) + Pixels.Max(pixel => pixel.X)) / 2.0;

    /// <summary>Middle of the box around it.</summary>
    public double Y { get; } = (Pixels.Min(pixel => pixel.Y) + Pixels.Max(pixel => pixel.Y)) / 2.0;

    /// <summary>The longer side of the box around it.</summary>
    public int Longest { get; } = 1 + Math.Max(Pixels.Max(pixel => pixel.X) - Pixels.Min(pixel => pixel.X), Pixels.Max(pixel => pixel.Y) - Pixels.Min(pixel => pixel.Y));

    /// <summary>True of a filled disc.</summary>
    public bool IsDisc => Cover > 0.72;

    /// <summary>The share that it covers of a square as large as it.</summary>
    public double Cover => Pixels.Count / (double)(Longest * Longest);

    /// <summary>True where its outer edge is a circle about a place: a land around a hole.</summary>
    public bool IsRoundAbout(double x, double y)
    {
        Span<double> out16 = stackalloc double[16];
        foreach (var pixel in Pixels)
        {
            var (dx, dy) = (pixel.X - x, pixel.Y - y);
            var sector = (int)Math.Floor((Elementary.Atan2(dy, dx) + Math.PI) * 8 / Math.PI) & 15;
            out16[sector] = Math.Max(out16[sector], Math.Sqrt((dx * dx) + (dy * dy)));
        }

        var (least, most) = (double.PositiveInfinity, 0.0);
        foreach (var reach in out16) (least, most) = (Math.Min(least, reach), Math.Max(most, reach));
        return most < (1.15 * least) + 1;
    }

    /// <summary>How alike two are, middle on middle: what both cover of what either does, 0 to 1.</summary>
    public double Alike(InkShape other)
    {
        var (dx, dy) = ((int)Math.Round(other.X - X), (int)Math.Round(other.Y - Y));
        var theirs = other.Pixels.ToHashSet();
        var both = Pixels.Count(pixel => theirs.Contains((pixel.X + dx, pixel.Y + dy)));
        return both / (double)(Pixels.Count + theirs.Count - both);
    }

    /// <summary>What hangs together about a place by sides or corners; null where nothing is there, or where it is larger than asked for.</summary>
    /// <param name="grey">The picture.</param>
    /// <param name="x">From where its samples count, px of the picture.</param>
    /// <param name="y">From where its samples count, px of the picture.</param>
    /// <param name="step">One sample, px of the picture.</param>
    /// <param name="starts">Samples where it may be.</param>
    /// <param name="threshold">What parts dark from bright.</param>
    /// <param name="dark">Which of both it is.</param>
    /// <param name="most">Its longer side at most, samples.</param>
    public static InkShape? About(GreyPicture grey, double x, double y, double step, IReadOnlyList<(int X, int Y)> starts, double threshold, bool dark, int most)
    {
        var seen = new HashSet<(int X, int Y)>();
        var queue = new Queue<(int X, int Y)>();
        var pixels = new List<(int X, int Y)>();
        foreach (var start in starts) Look(start);
        var (left, right, top, bottom) = (int.MaxValue, int.MinValue, int.MaxValue, int.MinValue);
        while (queue.TryDequeue(out var at))
        {
            pixels.Add(at);
            (left, right, top, bottom) = (Math.Min(left, at.X), Math.Max(right, at.X), Math.Min(top, at.Y), Math.Max(bottom, at.Y));
            if (Math.Max(right - left, bottom - top) >= most) return null;
            for (var dy = -1; dy <= 1; dy++)
            {
                for (var dx = -1; dx <= 1; dx++) if (dx != 0 || dy != 0) Look((at.X + dx, at.Y + dy));
            }
        }

        return pixels.Count == 0 ? null : new(pixels, true);

        void Look((int X, int Y) at)
        {
            if (seen.Add(at) && grey.Between(x + (at.X * step), y + (at.Y * step)) > threshold != dark) queue.Enqueue(at);
        }
    }

    /// <summary>From where to where it reaches across a direction.</summary>
    public (double From, double To) Across(double ux, double uy) => Reach(-uy, ux);

    /// <summary>Its smaller extent over its larger one, along a direction and across it.</summary>
    public double Narrow(double ux, double uy)
    {
        var ((a, b), (c, d)) = (Reach(ux, uy), Reach(-uy, ux));
        return Math.Min(b - a, d - c) / Math.Max(b - a, d - c);
    }

    private (double From, double To) Reach(double ux, double uy)
    {
        var (from, to) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var (x, y) in Pixels)
        {
            var at = (x * ux) + (y * uy);
            (from, to) = (Math.Min(from, at), Math.Max(to, at));
        }

        return (from - 0.5, to + 0.5);
    }
}
