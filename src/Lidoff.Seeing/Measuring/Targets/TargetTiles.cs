using Lidoff.Evidence.Entries;

namespace Lidoff.Seeing.Measuring.Targets;

/// <summary>
/// Makes a few known places of many: part by part the mean of what is left about the fit is added to it at the middle of that part's places.
/// Their doubt is what they themselves scatter by, where that is more than their places' scatter explains: paper bends as a whole.
/// </summary>
internal static class TargetTiles
{
    private const int MostAcross = 6;

    // The mean of many places is no better than this: what pulls on one pulls on its neighbours, px of what was looked at.
    private const double FinestPx = 0.01;

    private const int Unknowns = 9;

    /// <summary>The known places, and what whole parts are off the fit beyond their scatter, steps.</summary>
    public static (ValueList<TargetTile> Tiles, double BentSteps) Of(TargetFit fit, double pxPerPx)
    {
        var lens = fit.Lens;
        var half = Math.Max(lens.Frame.Width, lens.Frame.Height) / 2.0;
        var (left, top) = (fit.Places.Min(place => place.Column), fit.Places.Min(place => place.Row));
        var (across, down) = (Parts(fit.Places.Max(place => place.Column) - left + 1), Parts(fit.Places.Max(place => place.Row) - top + 1));
        var (wide, high) = ((fit.Places.Max(place => place.Column) - left + 1.0) / across, (fit.Places.Max(place => place.Row) - top + 1.0) / down);
        var parts = fit.Places.Select((place, i) => (Place: place, Left: fit.Rests[i]))
            .GroupBy(each => ((int)((each.Place.Column - left) / wide), (int)((each.Place.Row - top) / high)))
            .OrderBy(group => group.Key)
            .Select(group => (
                Count: group.Count(),
                Column: group.Average(each => (double)each.Place.Column),
                Row: group.Average(each => (double)each.Place.Row),
                X: group.Average(each => each.Left.X),
                Y: group.Average(each => each.Left.Y)))
            .ToList();
        var scatter = parts.Sum(part => part.Count * ((part.X * part.X) + (part.Y * part.Y))) * half * half / (fit.SdPx * fit.SdPx);
        var degrees = Math.Max(1, (2 * parts.Count) - Unknowns);
        var wider = Math.Sqrt(Math.Max(1, scatter / degrees));
        var tiles = parts.Select(part => new TargetTile(
            lens.At(part.Column, part.Row, part.X, part.Y),
            part.Column,
            part.Row,
            Math.Sqrt((fit.SdPx * fit.SdPx * wider * wider / part.Count) + (FinestPx * pxPerPx * FinestPx * pxPerPx)) / lens.PxPerStep(part.Column, part.Row)));
        var perPart = (double)fit.Places.Count / parts.Count;
        var beyond = fit.SdPx * Math.Sqrt(Math.Max(0, (wider * wider) - 1) / perPart);
        return ([.. tiles], beyond / lens.PxPerStep(lens.Middle.C, lens.Middle.R));
    }

    private static int Parts(int steps) => Math.Min(steps, MostAcross);
}
