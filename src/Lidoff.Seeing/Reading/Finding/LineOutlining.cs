using Lidoff.Evidence.Pictures;
using Lidoff.Numbers;

namespace Lidoff.Seeing.Reading.Finding;

/// <summary>Tight outlines out of where core and line end in the maps, to a fraction of a cell.</summary>
internal static class LineOutlining
{
    private const double Half = 0.5;

    // How the truth of the maps is drawn in training: the core ends a tenth of the height short of the line, the line's map a pixel beyond it.
    private const double CoreShort = 0.1;
    private const double LineBeyond = 1;

    // Ink is higher than capitals are drawn: round letters overshoot, strokes have a width, a lens blurs. Measured on bench/marks (median 1/0.93),
    // where for the same reason the line's map, drawn a pixel beyond the capitals, ends at the ink.
    private const double InkOverCapitals = 1.06;

    // Places along a line at which its height is looked at.
    private const int Looks = 9;

    /// <summary>The outline of one patch of core around its middle.</summary>
    public static PictureRegion Tight(FinderMaps maps, IReadOnlyList<int> patch, (double X, double Y) middle, double direction, double mapHeight)
    {
        var (along, down) = ((X: Elementary.Cos(direction), Y: Elementary.Sin(direction)), (X: -Elementary.Sin(direction), Y: Elementary.Cos(direction)));
        double least = double.PositiveInfinity, most = double.NegativeInfinity;
        foreach (var cell in patch)
        {
            var (x, y) = maps.Middle(cell);
            var u = ((x - middle.X) * along.X) + ((y - middle.Y) * along.Y);
            least = Math.Min(least, u);
            most = Math.Max(most, u);
        }

        // The strongest of the core across the axis at a place along it.
        double CoreAt(double u)
        {
            var best = 0.0;
            for (var k = -2; k <= 2; k++)
            {
                var v = k * 0.1 * mapHeight;
                best = Math.Max(best, maps.CoreAt(middle.X + (u * along.X) + (v * down.X), middle.Y + (u * along.Y) + (v * down.Y)));
            }

            return best;
        }

        double LineAt(double u) => maps.LineAt(middle.X + (u * along.X), middle.Y + (u * along.Y));

        // Where the core ends, and where the line does beyond it: the mean of both where they agree, otherwise the core's.
        double End(double at, int way)
        {
            var core = Edge(d => CoreAt(at + (way * d)), 0.25 * FinderMaps.Cell, 3 * FinderMaps.Cell) + (CoreShort * mapHeight);
            var line = Edge(d => LineAt(at + (way * d)), 0.25 * FinderMaps.Cell, (3 * FinderMaps.Cell) + mapHeight) - LineBeyond;
            return at + (way * (Math.Abs(core - line) < 0.3 * mapHeight ? (core + line) / 2 : core));
        }

        var from = End(least + (0.5 * FinderMaps.Cell), -1);
        var to = End(most - (0.5 * FinderMaps.Cell), 1);
        if (to - from < FinderMaps.Cell) (from, to) = (((from + to) / 2) - (FinderMaps.Cell / 2.0), ((from + to) / 2) + (FinderMaps.Cell / 2.0));
        var centred = (X: middle.X + ((from + to) / 2 * along.X), Y: middle.Y + ((from + to) / 2 * along.Y));
        var (height, shift) = Across(maps, centred, along, down, to - from, mapHeight);
        return new(new(centred.X + (shift * down.X), centred.Y + (shift * down.Y)), to - from, height, direction);
    }

    /// <summary>Mean probability of being in a line over an outline.</summary>
    public static double LineShare(FinderMaps maps, PictureRegion outline)
    {
        var (sum, count) = (0.0, 0);
        for (var i = -4; i <= 4; i++)
        {
            for (var j = -1; j <= 1; j++)
            {
                var at = outline.At(i / 10.0, j * 0.3);
                sum += maps.LineAt(at.X, at.Y);
                count++;
            }
        }

        return sum / count;
    }

    /// <summary>Height of a line and by how much its middle lies below the core's: the map of whole lines where it agrees with the heights told, otherwise these.</summary>
    private static (double Height, double Shift) Across(FinderMaps maps, (double X, double Y) centre, (double X, double Y) along, (double X, double Y) down, double length, double told)
    {
        var (above, below) = (new List<double>(), new List<double>());
        for (var i = 0; i < Looks; i++)
        {
            var u = (((i + 0.5) / Looks) - 0.5) * length;
            double At(double v) => maps.LineAt(centre.X + (u * along.X) + (v * down.X), centre.Y + (u * along.Y) + (v * down.Y));
            if (At(0) < Half) continue;
            above.Add(Edge(d => At(-d), 0.5, 1.5 * told));
            below.Add(Edge(At, 0.5, 1.5 * told));
        }

        told *= InkOverCapitals;
        if (above.Count == 0) return (told, 0);
        above.Sort();
        below.Sort();
        var (up, foot) = (above[above.Count / 2], below[below.Count / 2]);
        var seen = up + foot;
        return seen < 0.6 * told || seen > 1.6 * told ? (told, 0) : (Math.Sqrt(seen * told), (foot - up) / 2);
    }

    /// <summary>How far one can go until a map falls below one half, found between two steps by a straight line.</summary>
    private static double Edge(Func<double, double> map, double step, double farthest)
    {
        var before = map(0);
        if (before < Half) return 0;
        for (var d = step; d <= farthest; d += step)
        {
            var now = map(d);
            if (now < Half) return d - step + (step * (before - Half) / Math.Max(before - now, 1e-9));
            before = now;
        }

        return farthest;
    }
}
