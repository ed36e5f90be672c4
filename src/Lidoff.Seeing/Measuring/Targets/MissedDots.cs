using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Boards.Finding;
using Lidoff.Seeing.Measuring.Edges;

namespace Lidoff.Seeing.Measuring.Targets;

/// <summary>Looks again for dots where a grid says that they must be: round things are searched for by size, and some of a size between two are passed over.</summary>
internal static class MissedDots
{
    // How far a dot may lie from where it must be, in steps, and its radius from what it must be.
    private const double Off = 0.12;
    private const double SizeOff = 0.25;
    private const double LeastHeld = 0.7;

    private const int MostPasses = 3;
    private const int MostPlaces = 6000;

    /// <summary>All places: those of the fit and those that were missed within it and around it.</summary>
    public static List<TargetPlace> Add(TargetFit fit, double radiusPx, GreyPicture grey, bool dark)
    {
        var level = new SmoothLevel(grey.Width, grey.Height, grey.Values, grey.PxPerPx).Blurred(1);
        var places = fit.Places.ToDictionary(place => (place.Column, place.Row));
        var typical = fit.Lens.PxPerStep(fit.Lens.Middle.C, fit.Lens.Middle.R);
        var asked = new HashSet<(int, int)>();
        for (var pass = 0; pass < MostPasses && places.Count < MostPlaces; pass++)
        {
            var open = places.Keys.SelectMany(at => new[] { (at.Column + 1, at.Row), (at.Column - 1, at.Row), (at.Column, at.Row + 1), (at.Column, at.Row - 1) }).Where(at => !places.ContainsKey(at) && asked.Add(at)).Distinct().Order().ToList();
            if (open.Count == 0) break;
            foreach (var (column, row) in open)
            {
                if (At(fit, column, row, radiusPx / typical, level, grey.PxPerPx, dark) is { } at) places[(column, row)] = new(at, column, row);
            }
        }

        return [.. places.OrderBy(each => each.Key).Select(each => each.Value)];
    }

    /// <summary>
    /// The places of a finer grid where dots as large stand between those of the fit as well: where many dots were passed over, every second one makes a square grid too, larger by √2 or 2.
    /// Null where none do.
    /// </summary>
    public static List<TargetPlace>? Finer(TargetFit fit, double radiusPx, GreyPicture grey, bool dark)
    {
        var level = new SmoothLevel(grey.Width, grey.Height, grey.Values, grey.PxPerPx).Blurred(1);
        var typical = fit.Lens.PxPerStep(fit.Lens.Middle.C, fit.Lens.Middle.R);
        var places = fit.Places.ToDictionary(place => (place.Column, place.Row));
        var whole = places.Keys.Where(at => places.ContainsKey((at.Column + 1, at.Row)) && places.ContainsKey((at.Column, at.Row + 1)) && places.ContainsKey((at.Column + 1, at.Row + 1))).Order().ToList();
        if (whole.Count == 0) return null;
        bool Most(double c, double r) => 2 * whole.Count(at => At(fit, at.Column + c, at.Row + r, radiusPx / typical, level, grey.PxPerPx, dark) is not null) > whole.Count;
        if (!Most(0.5, 0.5)) return null;
        var half = Most(0.5, 0) && Most(0, 0.5);
        return [.. fit.Places.Select(place => half ? place with { Column = 2 * place.Column, Row = 2 * place.Row } : place with { Column = place.Column + place.Row, Row = place.Row - place.Column })];
    }

    private static PicturePoint? At(TargetFit fit, double column, double row, double radiusSteps, SmoothLevel level, double pxPerPx, bool dark)
    {
        var (at, step) = (fit.Lens.At(column, row), fit.Lens.PxPerStep(column, row));
        var radius = radiusSteps * step;
        if (RoundEdge.Around(level, at.X / pxPerPx, at.Y / pxPerPx, radius / pxPerPx, dark) is not { } edge || edge.Held < LeastHeld) return null;
        PicturePoint found = new(edge.X * pxPerPx, edge.Y * pxPerPx);
        return found.DistanceTo(at) < Off * step && Math.Abs((edge.Radius * pxPerPx) - radius) < SizeOff * radius ? found : null;
    }
}
