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
                var (at, step) = (fit.Lens.At(column, row), fit.Lens.PxPerStep(column, row));
                var radius = radiusPx * step / typical;
                if (RoundEdge.Around(level, at.X / grey.PxPerPx, at.Y / grey.PxPerPx, radius / grey.PxPerPx, dark) is not { } edge || edge.Held < LeastHeld) continue;
                var place = new TargetPlace(new(edge.X * grey.PxPerPx, edge.Y * grey.PxPerPx), column, row);
                if (place.At.DistanceTo(at) < Off * step && Math.Abs((edge.Radius * grey.PxPerPx) - radius) < SizeOff * radius) places[(column, row)] = place;
            }
        }

        return [.. places.OrderBy(each => each.Key).Select(each => each.Value)];
    }
}
