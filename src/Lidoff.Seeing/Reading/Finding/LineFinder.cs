using Lidoff.Numbers;
using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Reading.Finding;

/// <summary>
/// Text lines out of the finder's maps: cells of a line's core that hang together, each with the direction of its cells' mean unit vector,
/// pieces of one line joined; what is a speck, a dot, a logo or a bar is left out. The thresholds are choices of ours, set on drawn maps.
/// </summary>
public static class LineFinder
{
    private const double Core = 0.5;

    // The core is the middle two fifths of a line.
    private const double CoreShare = 0.4;

    private const double LeastHeight = 4;
    private const double LeastAgreement = 0.5;

    /// <summary>Lines in the order of their first cells, joined and cleaned.</summary>
    public static IReadOnlyList<FoundLine> Find(FinderMaps maps)
    {
        Guard.NotNull(maps);
        var lines = maps.Patches(maps.Core, Core).Select(patch => Line(maps, patch)).OfType<FoundLine>().ToList();
        return [.. LineJoining.Join(maps, lines)];
    }

    private static FoundLine? Line(FinderMaps maps, List<int> patch)
    {
        double weight = 0, cos = 0, sin = 0, cos2 = 0, sin2 = 0, x = 0, y = 0, logHeight = 0, dot = 0, logo = 0;
        foreach (var cell in patch)
        {
            var (w, (c, s), (c2, s2), (mx, my)) = (maps.Core[cell], maps.Direction(cell), maps.Axis(cell), maps.Middle(cell));
            weight += w;
            cos += w * c;
            sin += w * s;
            cos2 += w * c2;
            sin2 += w * s2;
            x += w * mx;
            y += w * my;
            logHeight += w * Elementary.Log(maps.Height(cell));
            dot += w * maps.Dot[cell];
            logo += w * maps.Logo[cell];
        }

        var (middle, height, area) = ((X: x / weight, Y: y / weight), Elementary.Exp(logHeight / weight), (double)patch.Count * FinderMaps.Cell * FinderMaps.Cell);
        // Not of unit vectors: a network trained by squares answers with a short one where it is not sure of up and down.
        var agreement = Math.Min(1, Math.Sqrt((cos * cos) + (sin * sin)) / weight);
        // By the axis: lines whose way is open are kept, the vote and the reader settle it.
        if (height < LeastHeight || Math.Sqrt((cos2 * cos2) + (sin2 * sin2)) / weight < LeastAgreement) return null;
        var direction = Straightened(maps, patch, middle, Along(Elementary.Atan2(sin, cos), cos2, sin2), height);
        var outline = LineOutlining.Tight(maps, patch, middle, direction, height);
        // A speck; a core as thick as no line of that height has, or as thin: a bar, a rim, a blot.
        var thickness = area / outline.Width;
        if (outline.Width < 0.2 * height || area < 0.08 * height * height || thickness > 2.5 * CoreShare * height + FinderMaps.Cell || thickness < 0.3 * CoreShare * height) return null;
        if (dot / weight > 0.5 && outline.Width < 1.8 * height) return null;
        var share = LineOutlining.LineShare(maps, outline);
        return share < 0.4 || logo / weight > Math.Max(0.5, share) ? null : new(outline, weight / patch.Count, agreement);
    }

    /// <summary>The axis tells the tilt, the direction which of its two ways: where a cell is not sure of up and down, its mean direction shrinks and leans, and its axis does not.</summary>
    private static double Along(double direction, double cos2, double sin2)
    {
        var axis = 0.5 * Elementary.Atan2(sin2, cos2);
        return Angles.Between(axis, direction) > Math.PI / 2 ? Angles.Whole(axis + Math.PI) : axis;
    }

    /// <summary>The long axis of a long patch tells its tilt better than its cells do; which way it runs they say.</summary>
    private static double Straightened(FinderMaps maps, List<int> patch, (double X, double Y) middle, double direction, double height)
    {
        double xx = 0, xy = 0, yy = 0, sum = 0;
        foreach (var cell in patch)
        {
            var (w, (x, y)) = (maps.Core[cell], maps.Middle(cell));
            var (dx, dy) = (x - middle.X, y - middle.Y);
            xx += w * dx * dx;
            xy += w * dx * dy;
            yy += w * dy * dy;
            sum += w;
        }

        var axis = 0.5 * Elementary.Atan2(2 * xy, xx - yy);
        if (Angles.Between(axis, direction) > Math.PI / 2) axis = Angles.Whole(axis + Math.PI);
        var spread = Math.Sqrt(((xx + yy) + Math.Sqrt(((xx - yy) * (xx - yy)) + (4 * xy * xy))) / (2 * sum));
        // A uniform bar of length L spreads by L/√12: twice as long as high, its axis counts.
        return spread * Math.Sqrt(12) > 2 * height && Angles.Between(axis, direction) < 0.35 ? axis : direction;
    }
}
