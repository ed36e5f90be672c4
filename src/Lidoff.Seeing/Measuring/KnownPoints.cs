using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring.Targets;

namespace Lidoff.Seeing.Measuring;

/// <summary>Places of the picture whose places on the board are known: four or more, no three of four on one line, fix slant and scale together.</summary>
internal static class KnownPoints
{
    private const int Least = 4;

    // All lengths between few places; of many, each place to its neighbour, to one a third on and to one across.
    private const int Few = 8;

    /// <summary>Most places of one job.</summary>
    public const int Most = 60;

    // A triangle below this share of the largest is a line, to anybody who clicks.
    private const double Flat = 0.03;

    /// <summary>Every fault of them together, in order.</summary>
    public static List<Fault> Check(IReadOnlyList<KnownPoint> points, PictureFrame frame)
    {
        var faults = new List<Fault>();
        for (var i = 0; i < points.Count; i++)
        {
            if (!frame.Holds(points[i].At))
            {
                faults.Add(new($"points[{i}].at", $"a place within {frame.Width} × {frame.Height} pixels", SeeingSentences.OutsideFrame($"points[{i}].at", points[i].At.X, points[i].At.Y, frame.Width, frame.Height)));
            }

            var before = faults.Count;
            BenchNumbers.Place(faults, $"points[{i}].mm", points[i].X);
            if (faults.Count == before) BenchNumbers.Place(faults, $"points[{i}].mm", points[i].Y);
            BenchNumbers.Doubt(faults, $"points[{i}].u_mm", points[i].UMm);
        }

        foreach (var (a, b) in points.SelectMany((a, i) => points.Skip(i + 1).Select(b => (a, b))))
        {
            if (a.At != b.At && (a.X != b.X || a.Y != b.Y)) continue;
            faults.Add(new("points", "different places", SeeingSentences.KnownPointTwice(a.At.X, a.At.Y)));
            return faults;
        }

        if (points.Count is > 0 and < Least) faults.Add(new("points", "four or more", SeeingSentences.FewKnownPoints(points.Count)));
        else if (points.Count > 0 && !Spread(points)) faults.Add(new("points", "four of which no three lie on one line", SeeingSentences.KnownPointsOnALine()));
        return faults;
    }

    /// <summary>All of them together, as places that tell slant and scale: the longest length between two stands for them.</summary>
    public static ReferenceLength Together(IReadOnlyList<KnownPoint> points, double clickPx)
    {
        var longest = points.SelectMany((a, i) => points.Skip(i + 1).Select(b => Length(a, b, 1, clickPx))).MaxBy(length => length.LengthMm)!;
        var mmPerPx = longest.LengthMm / longest.From.DistanceTo(longest.To);
        // In steps of one mm; the board's own doubt and the click's, which slant makes larger or smaller by less than it matters.
        return longest with
        {
            UMm = 0,
            Target = new(TargetPattern.Dots, 1, 0, [.. points.Select(point => new TargetTile(point.At, point.X, point.Y, Math.Sqrt(Square(point.UMm) + Square(clickPx * mmPerPx))))], 0, points.Count) { Placed = true },
        };
    }

    /// <summary>
    /// The known lengths between them, for words about what they disagree by. They share their clicks: n places have 2n − 3 things to tell, so each length counts as much less
    /// as there are more lengths than that.
    /// </summary>
    public static IReadOnlyList<ReferenceLength> Lengths(IReadOnlyList<KnownPoint> points, double clickPx)
    {
        var pairs = new SortedSet<(int, int)>();
        foreach (var step in points.Count <= Few ? Enumerable.Range(1, points.Count) : [1, points.Count / 3, points.Count / 2])
        {
            for (var i = 0; i < points.Count; i++)
            {
                var j = (i + step) % points.Count;
                if (i != j) pairs.Add((Math.Min(i, j), Math.Max(i, j)));
            }
        }

        var shared = Math.Sqrt(pairs.Count / ((2.0 * points.Count) - 3));
        return [.. pairs.Select(pair => Length(points[pair.Item1], points[pair.Item2], shared, clickPx))];
    }

    private static ReferenceLength Length(KnownPoint a, KnownPoint b, double shared, double clickPx) => new(
        a.At, b.At, Math.Sqrt(Square(a.X - b.X) + Square(a.Y - b.Y)), shared * Math.Sqrt(Square(a.UMm) + Square(b.UMm)), 0, shared * clickPx);

    private static bool Spread(IReadOnlyList<KnownPoint> points)
    {
        var largest = Triangles(points).Max();
        if (largest <= 0) return false;
        // Some four of them in general position: of four points, all four triangles must be wide.
        for (var a = 0; a < points.Count; a++)
        {
            for (var b = a + 1; b < points.Count; b++)
            {
                for (var c = b + 1; c < points.Count; c++)
                {
                    for (var d = c + 1; d < points.Count; d++)
                    {
                        if (Triangles([points[a], points[b], points[c], points[d]]).Min() > Flat * largest) return true;
                    }
                }
            }
        }

        return false;
    }

    /// <summary>Twice the area of every triangle, the smaller of that on the board and that in the picture, each against its own largest side squared.</summary>
    private static IEnumerable<double> Triangles(IReadOnlyList<KnownPoint> points)
    {
        for (var a = 0; a < points.Count; a++)
        {
            for (var b = a + 1; b < points.Count; b++)
            {
                for (var c = b + 1; c < points.Count; c++)
                {
                    yield return Math.Min(Area(points[a].X, points[a].Y, points[b].X, points[b].Y, points[c].X, points[c].Y),
                        Area(points[a].At.X, points[a].At.Y, points[b].At.X, points[b].At.Y, points[c].At.X, points[c].At.Y));
                }
            }
        }
    }

    private static double Area(double ax, double ay, double bx, double by, double cx, double cy)
    {
        var side = Math.Max(Square(ax - bx) + Square(ay - by), Math.Max(Square(bx - cx) + Square(by - cy), Square(cx - ax) + Square(cy - ay)));
        return side <= 0 ? 0 : Math.Abs(((bx - ax) * (cy - ay)) - ((by - ay) * (cx - ax))) / side;
    }

    private static double Square(double x) => x * x;
}
