using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Boards.Finding.Matching;

/// <summary>Leads of a part stand in straight rows as evenly as those of any other, and holes of a header 2.54 mm apart in two: such rows and a mark or two more fit on any two boards.</summary>
internal static class StraightRow
{
    /// <summary>Those places that lie beside the straight line that holds most of them.</summary>
    /// <param name="places">The places.</param>
    /// <param name="wide">How far from a line is on it still, px.</param>
    public static IReadOnlyList<PicturePoint> Beside(IReadOnlyList<PicturePoint> places, double wide)
    {
        var beside = places;
        for (var i = 0; i < places.Count; i++)
        {
            for (var j = i + 1; j < places.Count; j++)
            {
                var (a, dx, dy, length) = (places[i], places[j].X - places[i].X, places[j].Y - places[i].Y, places[i].DistanceTo(places[j]));
                if (length <= 0) continue;
                List<PicturePoint> rest = [.. places.Where(place => Math.Abs(((place.X - a.X) * dy) - ((place.Y - a.Y) * dx)) > wide * length)];
                if (rest.Count < beside.Count) beside = rest;
            }
        }

        return beside;
    }
}
