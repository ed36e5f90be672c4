using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Boards.Finding;
using Lidoff.Seeing.Measuring.Edges;
using Lidoff.Seeing.Pictures;

namespace Lidoff.Seeing.Measuring.Targets;

/// <summary>
/// Finds a checkerboard or a dot grid anywhere in a picture, at any turn, without being told how many squares it has: the largest patch
/// that holds together. Managed code alone: the vision library wants a whole rectangle of a known size, and a target that is half covered has none.
/// </summary>
public static class TargetSearch
{
    // Corners are found to a twentieth of a pixel of this size; more costs time and tells little more.
    private const int LongestSide = 2200;

    private const int LeastAcross = 3;
    private const int LeastCorners = 12;
    private const int LeastDotsAcross = 4;
    private const int LeastDots = 16;

    // Of the places within its outline so many must be seen: half of a target may be covered, a scatter of rivets is none.
    private const double LeastFilled = 0.45;

    // What is left at a corner or dot of a grid is a few hundredths of its pitch at most, however grainy; the gaps between dots keep to none.
    private const double MostRest = 0.04;

    // From a corner outwards a square is as dark near it as far from it; between dots it only gets dark at their edges.
    private const double LeastNear = 0.45;

    // Sixteen dots need a look of this size, px.
    private const int LeastLook = 120;

    // Squares below this are smaller than the ring that tells a corner, px of what was looked at.
    private const double LeastStepPx = 6;

    /// <summary>Looks for one. A fault says that there is none, or why what was found cannot serve; a picture that breaks off while it is read fails with a sentence.</summary>
    /// <param name="path">The file.</param>
    /// <param name="name">Its name for people.</param>
    /// <param name="header">Its header.</param>
    public static Outcome<FoundTarget> At(string path, string name, PictureHeader header)
    {
        Guard.NotNull(header);
        return PictureFile.Whole<FoundTarget>(name, header, () => Find(GreyPicture.Read(path, header, LongestSide), new(header.Width, header.Height)));
    }

    /// <summary>Looks for one in a picture that is in memory.</summary>
    internal static Outcome<FoundTarget> Find(GreyPicture grey, PictureFrame frame)
    {
        var checker = Checker(grey, frame);
        if ((checker ?? AnyDots(grey, frame)) is not { } found) return TargetSentences.None;
        return TargetChecks.Flat(found) is { } bent ? bent : found;
    }

    private static FoundTarget? Checker(GreyPicture grey, PictureFrame frame)
    {
        var finest = new SmoothLevel(grey.Width, grey.Height, grey.Values, grey.PxPerPx);
        (Dictionary<(int C, int R), int> Patch, List<GridPoint> Points, SmoothLevel Level)? best = null;
        for (var level = finest; Math.Min(level.Width, level.Height) >= 60; level = level.Halved())
        {
            var points = CheckerCorners.Find(level);
            var patch = GridGrowth.Largest(points, 2 * LeastStepPx);
            // A coarser look that sees no more is no better.
            if (best is null || patch.Count > 1.1 * best.Value.Patch.Count) best = (patch, points, level);
        }

        if (best is not var (grid, corners, at) || !Holds(grid.Keys, LeastAcross, LeastCorners)) return null;
        // Placed in the finest look, within a third of a square.
        var scale = at.Px / finest.Px;
        var reach = Math.Clamp(0.3 * Step(grid, corners) * scale, 3, 12);
        var fine = finest.Blurred(0.7);
        var places = new List<TargetPlace>();
        foreach (var ((column, row), index) in grid.OrderBy(each => each.Key))
        {
            var (x, y) = (corners[index].X * scale, corners[index].Y * scale);
            if (CheckerCorners.Place(fine, x, y, reach) is var (px, py)) places.Add(new(new(px * finest.Px, py * finest.Px), column, row));
        }

        // The gaps of a dot grid change from dark to light like the corners of squares that stand on their points.
        var near = places.Select(place => CheckerCorners.Nearness(fine, place.At.X / finest.Px, place.At.Y / finest.Px, Step(grid, corners) * scale)).Order().ToList();
        return near.Count == 0 || near[near.Count / 2] < LeastNear ? null : Fitted(TargetPattern.Checker, places, 0, grey, frame, LeastAcross, LeastCorners);
    }

    // Round things are looked for up to a size in pixels: few large dots are as small as others in a smaller look.
    private static FoundTarget? AnyDots(GreyPicture grey, PictureFrame frame)
    {
        for (var look = grey; Math.Min(look.Width, look.Height) >= LeastLook; look = look.Halved())
        {
            if (Dots(look, frame) is { } found) return found;
        }

        return null;
    }

    private static FoundTarget? Dots(GreyPicture grey, PictureFrame frame)
    {
        var marks = RoundMerge.Of(RoundSearch.Find(grey));
        FoundTarget? best = null;
        foreach (var sort in new[] { new[] { MarkSort.Dark, MarkSort.Ring }, [MarkSort.Bright] })
        {
            List<GridPoint> points = [.. marks.Where(mark => sort.Contains(mark.Sort)).Select(mark => new GridPoint(mark.At.X, mark.At.Y, double.NaN, mark.RadiusPx))];
            if (points.Count < LeastDots) continue;
            var grid = GridGrowth.Largest(points, 2 * LeastStepPx * grey.PxPerPx);
            if (grid.Count < LeastDots) continue;
            List<TargetPlace> places = [.. grid.OrderBy(each => each.Key).Select(each => new TargetPlace(new(points[each.Value].X, points[each.Value].Y), each.Key.C, each.Key.R))];
            var radii = grid.Values.Select(index => points[index].Size).Order().ToList();
            var radius = radii[radii.Count / 2];
            if (TargetFit.Of(places, radius, frame, grey.PxPerPx, LeastDots) is not { } first) continue;
            for (var finer = 0; finer < 2 && MissedDots.Finer(first, radius, grey, sort[0] == MarkSort.Dark) is { } between; finer++)
            {
                if (TargetFit.Of(between, radius, frame, grey.PxPerPx, LeastDots) is not { } fit) break;
                first = fit;
            }

            places = MissedDots.Add(first, radius, grey, sort[0] == MarkSort.Dark);
            if (Fitted(TargetPattern.Dots, places, radius, grey, frame, LeastDotsAcross, LeastDots) is { } found && found.Places.Count > (best?.Places.Count ?? 0)) best = found;
        }

        return best;
    }

    private static FoundTarget? Fitted(TargetPattern pattern, List<TargetPlace> places, double radius, GreyPicture grey, PictureFrame frame, int across, int least)
    {
        if (TargetFit.Of(places, radius, frame, grey.PxPerPx, least) is not { } fit || !Holds(fit.Places.Select(place => (place.Column, place.Row)), across, least)) return null;
        var (tiles, bent) = TargetTiles.Of(fit, grey.PxPerPx);
        var (left, top) = (fit.Places.Min(place => place.Column), fit.Places.Min(place => place.Row));
        var step = fit.Lens.PxPerStep(fit.Lens.Middle.C, fit.Lens.Middle.R);
        if (fit.SdPx > MostRest * step) return null;
        var fills = Math.Min(1, fit.Places.Sum(place => Square(fit.Lens.PxPerStep(place.Column, place.Row))) / frame.Width / frame.Height);
        return new(
            pattern,
            [.. fit.Places.Select(place => place with { Column = place.Column - left, Row = place.Row - top })],
            [.. tiles.Select(tile => tile with { Column = tile.Column - left, Row = tile.Row - top })],
            fit.SdPx, fit.SdPx / step, bent, step, fit.Lens.Bend, fit.BendU, fills);
    }

    private static bool Holds(IEnumerable<(int C, int R)> places, int across, int least)
    {
        var all = places.ToList();
        if (all.Count < least) return false;
        var (columns, rows) = (all.Max(place => place.C) - all.Min(place => place.C) + 1, all.Max(place => place.R) - all.Min(place => place.R) + 1);
        return columns >= across && rows >= across && all.Count >= LeastFilled * columns * rows;
    }

    private static double Step(Dictionary<(int C, int R), int> grid, List<GridPoint> points)
    {
        var steps = new List<double>();
        foreach (var ((c, r), index) in grid)
        {
            if (!grid.TryGetValue((c + 1, r), out var next)) continue;
            steps.Add(Math.Sqrt(Square(points[next].X - points[index].X) + Square(points[next].Y - points[index].Y)));
        }

        steps.Sort();
        return steps[steps.Count / 2];
    }

    private static double Square(double x) => x * x;
}
