using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Boards.Finding.Matching;

/// <summary>Leads of a part stand in a straight row as evenly as those of any other: a row of them and two marks more fit on any two boards.</summary>
internal static class StraightRow
{
    /// <summary>How many places lie beside the straight line that holds most of them.</summary>
    /// <param name="places">The places.</param>
    /// <param name="wide">How far from a line is on it still, px.</param>
    public static int Beside(IReadOnlyList<PicturePoint> places, double wide)
    {
        var most = Math.Min(2, places.Count);
        for (var i = 0; i < places.Count; i++)
        {
            for (var j = i + 1; j < places.Count; j++)
            {
                var (a, dx, dy, length) = (places[i], places[j].X - places[i].X, places[j].Y - places[i].Y, places[i].DistanceTo(places[j]));
                if (length > 0) most = Math.Max(most, places.Count(place => Math.Abs(((place.X - a.X) * dy) - ((place.Y - a.Y) * dx)) <= wide * length));
            }
        }

        return places.Count - most;
    }
}
