namespace Lidoff.Seeing.Measuring.Targets;

/// <summary>Points sorted into square cells, so that those near a place are found without asking all.</summary>
internal sealed class PointField
{
    private readonly IReadOnlyList<GridPoint> points;
    private readonly Dictionary<(int X, int Y), List<int>> cells = [];
    private readonly double cell;

    /// <summary>Sorts them into cells of a size, px.</summary>
    public PointField(IReadOnlyList<GridPoint> points, double cell)
    {
        (this.points, this.cell) = (points, cell);
        for (var i = 0; i < points.Count; i++)
        {
            var key = Key(points[i].X, points[i].Y);
            if (!cells.TryGetValue(key, out var list)) cells[key] = list = [];
            list.Add(i);
        }
    }

    /// <summary>The nearest points to one of them, nearest first, within five cells.</summary>
    public List<int> Nearest(int of, int most)
    {
        var (x, y) = (points[of].X, points[of].Y);
        var (cx, cy) = Key(x, y);
        var near = new List<(double Apart, int Index)>();
        for (var ring = 0; ring <= 5; ring++)
        {
            for (var dy = -ring; dy <= ring; dy++)
            {
                for (var dx = -ring; dx <= ring; dx += Math.Abs(dy) == ring ? 1 : Math.Max(1, 2 * ring))
                {
                    if (cells.TryGetValue((cx + dx, cy + dy), out var list)) foreach (var i in list) if (i != of) near.Add((Apart(i, x, y), i));
                }
            }

            // Whatever lies in farther rings is farther away than a ring is wide.
            if (near.Count(each => each.Apart <= ring * cell) >= most) break;
        }

        near.Sort();
        return [.. near.Take(most).Select(each => each.Index)];
    }

    /// <summary>The nearest point to a place within a distance, px; -1 where there is none.</summary>
    public int At(double x, double y, double within)
    {
        var (best, found) = (within, -1);
        var (low, high) = (Key(x - within, y - within), Key(x + within, y + within));
        for (var cy = low.Y; cy <= high.Y; cy++)
        {
            for (var cx = low.X; cx <= high.X; cx++)
            {
                if (!cells.TryGetValue((cx, cy), out var list)) continue;
                foreach (var i in list)
                {
                    var apart = Apart(i, x, y);
                    if (apart < best || (apart == best && i < found)) (best, found) = (apart, i);
                }
            }
        }

        return found;
    }

    private double Apart(int i, double x, double y) => Math.Sqrt(((points[i].X - x) * (points[i].X - x)) + ((points[i].Y - y) * (points[i].Y - y)));

    private (int X, int Y) Key(double x, double y) => ((int)Math.Floor(x / cell), (int)Math.Floor(y / cell));
}
