using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Pictures;

namespace Lidoff.Seeing.Reading.Finding;

/// <summary>
/// What stands out of an even body beside text, dot and rim: a mark that is no text and that the finder's map of such marks did not know. The
/// thresholds are choices of ours, set on drawn tops.
/// </summary>
internal static class LeftoverFinder
{
    // In heights of a line: ink that near to a line is the line's; pieces that near to one another are one mark; a mark is that large at least and at most.
    private const double OfALine = 0.3;
    private const double Together = 0.3;
    private const double Least = 0.7;
    private const double Most = 5;

    // Longer ones are bars, rims and traces.
    private const double Longest = 4;

    // Ink is that many spreads of the ground away from it, and that share of what the text is.
    private const double Spreads = 5;
    private const double OfInk = 0.4;

    // Share of the body's lesser side along its rim that is not looked at: bevels and shadows.
    private const double Rim = 0.05;

    // What stands out in more places is glare, a scratch or another part.
    private const int MostOfThem = 2;

    // So little of a rectangle filled is grain or a scratch.
    private const double LeastFill = 0.12;

    /// <summary>Rectangles around what was found, px of the sheet, upright on it; none where there is no text to say how large marks are.</summary>
    /// <param name="sheet">What is looked at.</param>
    /// <param name="maps">What the finder says of it.</param>
    /// <param name="body">The body on it.</param>
    /// <param name="lines">Lines of text on it.</param>
    /// <param name="dot">Pin-1 dot on it; null where there is none.</param>
    public static IReadOnlyList<PictureRegion> Find(FinderSheet sheet, FinderMaps maps, PictureRegion body, IReadOnlyList<PictureRegion> lines, PicturePoint? dot)
    {
        Guard.NotNull(sheet);
        if (Guard.NotNull(lines).Count == 0) return [];
        var height = lines.Select(line => line.Height).Order().ElementAt(lines.Count / 2);
        var inner = new Frame(body.Grown(-Math.Max(FinderMaps.Cell, Rim * Math.Min(body.Width, body.Height))));
        Frame[] wide = [.. lines.Select(line => new Frame(line.Grown(OfALine * line.Height)))];
        var (w, h) = (sheet.ValidWidth, sheet.ValidHeight);
        var free = new bool[w * h];
        var ink = new List<double>();
        var places = new List<(double X, double Y, double Grey)>();
        for (var y = 0; y < h; y++)
        {
            for (var x = 0; x < w; x++)
            {
                var at = new PicturePoint(x + 0.5, y + 0.5);
                if (!inner.Holds(at)) continue;
                if (Array.Exists(wide, line => line.Holds(at)) || (dot is { } d && d.DistanceTo(at) < 0.6 * height)) continue;
                free[(y * w) + x] = true;
                if (((x + (3 * y)) & 3) == 0) places.Add(((2.0 * x / w) - 1, (2.0 * y / h) - 1, sheet.Pixels[(y * sheet.Width) + x]));
            }
        }

        if (places.Count < 50) return [];
        var (plane, spread) = Ground(places);
        double Off(int x, int y) => Math.Abs(sheet.Pixels[(y * sheet.Width) + x] - plane((2.0 * x / w) - 1, (2.0 * y / h) - 1));
        foreach (var line in lines)
        {
            var corners = line.Corners;
            var (left, right, top, foot) = (Math.Max(0, (int)corners.Min(c => c.X)), Math.Min(w, corners.Max(c => c.X)), Math.Max(0, (int)corners.Min(c => c.Y)), Math.Min(h, corners.Max(c => c.Y)));
            for (var y = top; y < foot; y++)
            {
                for (var x = left; x < right; x++) ink.Add(Off(x, y));
            }
        }

        ink.Sort();
        var least = Math.Max(Spreads * spread, ink.Count > 0 ? OfInk * ink[(int)(0.9 * (ink.Count - 1))] : 0);
        var on = new bool[w * h];
        for (var i = 0; i < on.Length; i++) on[i] = free[i] && Off(i % w, i / w) > least;
        var boxes = Merged([.. ConnectedPatches.Of(on, w).Where(patch => patch.Count >= 6).Select(patch => Box(patch, w))], Together * height);
        List<PictureRegion> fitting = [.. boxes.Where(box => Fits(box, height)).Select(box => PictureRegion.Box(box.Left, box.Top, box.Right - box.Left, box.Foot - box.Top)).Where(box => IsOnBody(maps, box))];
        return fitting.Count > MostOfThem ? [] : fitting;
    }

    // What lies beside the body is a neighbour's.
    private static bool IsOnBody(FinderMaps maps, PictureRegion box)
    {
        var (sum, count, around) = (0.0, 0, new Frame(box.Grown(FinderMaps.Cell / 2.0)));
        for (var cell = 0; cell < maps.Body.Length; cell++)
        {
            if (maps.Middle(cell) is var (x, y) && !around.Holds(new(x, y))) continue;
            sum += maps.Body[cell];
            count++;
        }

        return count > 0 && sum >= 0.5 * count;
    }

    private static bool Fits((int Left, int Top, int Right, int Foot, int Count) box, double height)
    {
        var (w, h) = (box.Right - box.Left, box.Foot - box.Top);
        var (longer, shorter) = (Math.Max(w, h), Math.Min(w, h));
        return longer >= Least * height && longer <= Most * height && longer <= Longest * shorter && box.Count >= LeastFill * w * h;
    }

    // A plane through the ground, what stands out of it left out by and by, and its spread.
    private static (Func<double, double, double> Plane, double Spread) Ground(List<(double X, double Y, double Grey)> places)
    {
        var kept = places;
        double a = 0, b = 0, c = 0, spread = 0;
        for (var round = 0; round < 5; round++)
        {
            double n = kept.Count, sx = 0, sy = 0, sz = 0, xx = 0, xy = 0, yy = 0, xz = 0, yz = 0;
            foreach (var (x, y, z) in kept)
            {
                sx += x;
                sy += y;
                sz += z;
                xx += x * x;
                xy += x * y;
                yy += y * y;
                xz += x * z;
                yz += y * z;
            }

            var (cxx, cxy, cyy, cxz, cyz) = (xx - (sx * sx / n) + 1e-6, xy - (sx * sy / n), yy - (sy * sy / n) + 1e-6, xz - (sx * sz / n), yz - (sy * sz / n));
            var det = (cxx * cyy) - (cxy * cxy);
            (a, b) = (((cxz * cyy) - (cyz * cxy)) / det, ((cyz * cxx) - (cxz * cxy)) / det);
            c = (sz - (a * sx) - (b * sy)) / n;
            var rests = places.ConvertAll(p => Math.Abs(p.Grey - (a * p.X) - (b * p.Y) - c));
            rests.Sort();
            // The median of what is left is 0.6745 spreads of a normal one.
            spread = Math.Max(1e-3, rests[rests.Count / 2] / 0.6745);
            var most = 3 * spread;
            kept = [.. places.Where(p => Math.Abs(p.Grey - (a * p.X) - (b * p.Y) - c) <= most)];
            if (kept.Count < 50) break;
        }

        return ((x, y) => (a * x) + (b * y) + c, spread);
    }

    private static (int Left, int Top, int Right, int Foot, int Count) Box(List<int> patch, int w) =>
        (patch.Min(i => i % w), patch.Min(i => i / w), patch.Max(i => i % w) + 1, patch.Max(i => i / w) + 1, patch.Count);

    private static List<(int Left, int Top, int Right, int Foot, int Count)> Merged(List<(int Left, int Top, int Right, int Foot, int Count)> boxes, double near)
    {
        for (var again = true; again;)
        {
            again = false;
            for (var i = 0; i < boxes.Count && !again; i++)
            {
                for (var j = i + 1; j < boxes.Count && !again; j++)
                {
                    var (p, q) = (boxes[i], boxes[j]);
                    if (Math.Max(Math.Max(q.Left - p.Right, p.Left - q.Right), Math.Max(q.Top - p.Foot, p.Top - q.Foot)) > near) continue;
                    boxes[i] = (Math.Min(p.Left, q.Left), Math.Min(p.Top, q.Top), Math.Max(p.Right, q.Right), Math.Max(p.Foot, q.Foot), p.Count + q.Count);
                    boxes.RemoveAt(j);
                    again = true;
                }
            }
        }

        return boxes;
    }

    /// <summary>A rectangle with its directions at hand: asked for each pixel, their sines would be most of the work.</summary>
    private sealed class Frame(PictureRegion region)
    {
        private readonly (double X, double Y) along = region.Along;
        private readonly (double X, double Y) down = region.Down;

        public bool Holds(PicturePoint point)
        {
            var (x, y) = (point.X - region.Middle.X, point.Y - region.Middle.Y);
            return Math.Abs((x * along.X) + (y * along.Y)) <= region.Width / 2 && Math.Abs((x * down.X) + (y * down.Y)) <= region.Height / 2;
        }
    }
}
