namespace Lidoff.Seeing.Measuring.Targets;

/// <summary>
/// Finds the largest patch of points that lie as on a square grid seen at a slant: from a point with four neighbours about it the grid is
/// grown step by step, each next place foretold from those beside it, so that slant and lens add up without a slip and holes are gone around.
/// </summary>
internal static class GridGrowth
{
    private const int Neighbours = 12;
    private const int MostSeeds = 600;

    // How far a point may lie from where it was foretold, in steps.
    private const double Off = 0.2;

    // Steps of the two directions, and the angle between them, under the greatest slant that is still read: 50°.
    private const double LeastRatio = 0.6;
    private const double MostCosine = 0.6;

    private static readonly (int C, int R)[] Sides = [(1, 0), (-1, 0), (0, 1), (0, -1)];

    /// <summary>The places of the largest patch with the index of the point at each; empty where no point has its four neighbours.</summary>
    public static Dictionary<(int C, int R), int> Largest(IReadOnlyList<GridPoint> points, double cell)
    {
        var best = new Dictionary<(int C, int R), int>();
        if (points.Count < 5) return best;
        var field = new PointField(points, cell);
        var tried = new bool[points.Count];
        var step = Math.Max(1, points.Count / MostSeeds);
        // Every seventh, and so on: seeds are spread over the picture before they stand close.
        for (var start = 0; start < step; start++)
        {
            for (var seed = start; seed < points.Count; seed += step)
            {
                if (tried[seed] || Cross(points, field, seed) is not { } patch) continue;
                Grow(points, field, patch);
                foreach (var index in patch.Values) tried[index] = true;
                if (patch.Count > best.Count) best = patch;
            }

            if (start >= 6 || best.Count > points.Count / 2) break;
        }

        return best;
    }

    /// <summary>A point with one neighbour on each of its four sides; null where it has none such.</summary>
    private static Dictionary<(int C, int R), int>? Cross(IReadOnlyList<GridPoint> points, PointField field, int seed)
    {
        var at = points[seed];
        var near = field.Nearest(seed, Neighbours).Where(i => at.Fits(points[i], 1)).ToList();
        foreach (var i in near.Take(3))
        {
            var (ux, uy) = (points[i].X - at.X, points[i].Y - at.Y);
            var u = Math.Sqrt((ux * ux) + (uy * uy));
            foreach (var j in near)
            {
                var (vx, vy) = (points[j].X - at.X, points[j].Y - at.Y);
                var v = Math.Sqrt((vx * vx) + (vy * vy));
                if (j == i || Math.Min(u, v) < LeastRatio * Math.Max(u, v) || Math.Abs((ux * vx) + (uy * vy)) > MostCosine * u * v) continue;
                var (back, under) = (field.At(at.X - ux, at.Y - uy, Off * u), field.At(at.X - vx, at.Y - vy, Off * v));
                if (back < 0 || under < 0 || back == under || !at.Fits(points[back], 1) || !at.Fits(points[under], 1)) continue;
                // Columns to the right and rows down, whichever way the target lies.
                return (ux * vy) - (uy * vx) > 0
                    ? new() { [(0, 0)] = seed, [(1, 0)] = i, [(-1, 0)] = back, [(0, 1)] = j, [(0, -1)] = under }
                    : new() { [(0, 0)] = seed, [(1, 0)] = j, [(-1, 0)] = under, [(0, 1)] = i, [(0, -1)] = back };
            }
        }

        return null;
    }

    private static void Grow(IReadOnlyList<GridPoint> points, PointField field, Dictionary<(int C, int R), int> patch)
    {
        var taken = patch.Values.ToHashSet();
        var open = new Queue<(int C, int R)>(patch.Keys.SelectMany(Around));
        while (open.TryDequeue(out var place))
        {
            if (patch.ContainsKey(place) || Foretold(points, patch, place) is not var (x, y, step, from, steps)) continue;
            var found = field.At(x, y, Off * step);
            if (found < 0 || !points[from].Fits(points[found], steps) || !taken.Add(found)) continue;
            patch[place] = found;
            foreach (var next in Around(place)) if (!patch.ContainsKey(next)) open.Enqueue(next);
        }
    }

    private static IEnumerable<(int C, int R)> Around((int C, int R) place) => Sides.Select(side => (place.C + side.C, place.R + side.R));

    /// <summary>Where a place should show by those beside it: straight on from two, or the fourth of a square; with the step there and a neighbour.</summary>
    private static (double X, double Y, double Step, int From, int Steps)? Foretold(IReadOnlyList<GridPoint> points, Dictionary<(int C, int R), int> patch, (int C, int R) at)
    {
        var (x, y, step, count, from, steps) = (0.0, 0.0, double.PositiveInfinity, 0, -1, 0);
        foreach (var (c, r) in Sides)
        {
            if (!patch.TryGetValue((at.C + c, at.R + r), out var near)) continue;
            if (from < 0 || steps != 1) (from, steps) = (near, 1);
            if (patch.TryGetValue((at.C + (2 * c), at.R + (2 * r)), out var far)) Add((2 * points[near].X) - points[far].X, (2 * points[near].Y) - points[far].Y, near, far);
            // Around the corner, either way.
            foreach (var turn in new[] { 1, -1 })
            {
                var (dc, dr) = (turn * r, turn * c);
                if (!patch.TryGetValue((at.C + c + dc, at.R + r + dr), out var corner) || !patch.TryGetValue((at.C + dc, at.R + dr), out var beside)) continue;
                Add(points[near].X + points[beside].X - points[corner].X, points[near].Y + points[beside].Y - points[corner].Y, near, corner);
            }
        }

        return count == 0 ? null : (x / count, y / count, step, from, steps);

        void Add(double px, double py, int a, int b)
        {
            var (dx, dy) = (points[a].X - points[b].X, points[a].Y - points[b].Y);
            (x, y, count, step) = (x + px, y + py, count + 1, Math.Min(step, Math.Sqrt((dx * dx) + (dy * dy))));
        }
    }
}
