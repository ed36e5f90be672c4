using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Measuring.Edges;

namespace Lidoff.Seeing.Measuring.Rulers;

/// <summary>
/// Finds evenly spaced lines along a row that somebody pointed out: the brightness along it repeats with their period (its
/// autocorrelation), each line's place is then the middle of its ink, and places against numbers, as a plane seen at a slant has them, tell period and doubt.
/// </summary>
internal static class RulerSearch
{
    private const int LeastLines = 8;
    private const double LeastPeriodPx = 3;

    // Of the repeats that are nearly as good as the best, the shortest is the period: twice it repeats as well.
    private const double NearlyAsGood = 0.75;
    private const double LeastLikeness = 0.3;

    // Share of the period.
    private const double MostScatter = 0.12;

    // Parts of the row that are asked for the period: along a slanted one it changes, and in the middle of it least.
    private static readonly double[] Parts = [1, 0.5, 0.25];

    /// <summary>The lines, or null where nothing repeats evenly along the row, or fewer lines than wanted do; which of them are longer is left open where that is not asked for.</summary>
    public static FoundRuler? Find(GreyPicture grey, PicturePoint from, PicturePoint to, int least = LeastLines, bool longer = true)
    {
        var track = RulerTrack.Of(grey, from, to);
        if (track.Count < 3 * LeastLines) return null;
        var raw = track.Profile(0);
        RuledRow? best = null;
        foreach (var period in Parts.Select(part => Period(raw, part)).OfType<double>().Distinct())
        {
            var ink = RulerTrack.Flat(raw, (int)Math.Round(period));
            // Lines are dark on light, or light on dark: whichever is the narrower part.
            if (ink.Count(value => value > 0) < ink.Length / 2.0) ink = [.. ink.Select(value => -value)];
            if (RuledRow.Of(ink, period) is { } row && row.Count >= Math.Max(LeastLines, least) && row.Scatter <= MostScatter * row.Step && row.Count > (best?.Count ?? 0)) best = row;
        }

        if (best is null) return null;
        // The grid of pixels leaves a twentieth.
        var end = Math.Max(0.05, best.EndU * RulerTrack.Step) * grey.PxPerPx;
        return new(track.At(best.Place(best.First)), track.At(best.Place(best.Last)), best.Last - best.First, end, best.Scatter * RulerTrack.Step * grey.PxPerPx, longer ? LongerLines.Every(track, best) : [])
        {
            Middle = track.At(best.Place(best.First + ((best.Last - best.First) / 2))),
        };
    }

    /// <summary>The shortest repeat in the middle part of a row that is nearly as good as the best, in steps of it.</summary>
    private static double? Period(float[] whole, double part)
    {
        var skip = (int)(whole.Length * (1 - part) / 2);
        var raw = whole[skip..(whole.Length - skip)];
        var most = raw.Length / (LeastLines - 1);
        var shortest = (int)(LeastPeriodPx / RulerTrack.Step);
        if (most <= shortest) return null;
        var flat = RulerTrack.Flat(raw, Math.Max(8, most / 2));
        var power = flat.Sum(value => (double)value * value) / flat.Length;
        if (power < 4) return null;
        var likeness = new double[most + 2];
        for (var lag = 1; lag < likeness.Length; lag++)
        {
            var sum = 0.0;
            for (var i = 0; i + lag < flat.Length; i++) sum += (double)flat[i] * flat[i + lag];
            likeness[lag] = sum / (flat.Length - lag) / power;
        }

        var peaks = Enumerable.Range(shortest, most - shortest)
            .Where(lag => likeness[lag] > LeastLikeness && likeness[lag] >= likeness[lag - 1] && likeness[lag] >= likeness[lag + 1]).ToList();
        if (peaks.Count == 0) return null;
        var best = peaks.Max(lag => likeness[lag]);
        var first = peaks.First(lag => likeness[lag] > NearlyAsGood * best);
        // The top of a parabola through the peak and its neighbours.
        var (a, b, c) = (likeness[first - 1], likeness[first], likeness[first + 1]);
        return first + ((a - c) / (2 * Math.Min(-1e-12, a - (2 * b) + c)));
    }
}
