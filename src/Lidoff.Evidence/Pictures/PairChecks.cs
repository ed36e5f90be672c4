using System.Globalization;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Pictures;

/// <summary>What must hold of point pairs before a map is fitted through them.</summary>
internal static class PairChecks
{
    /// <summary>
    /// Three points count as on one line when the middle one lies within this share of their length beside it. Clicks are
    /// good to about a pixel in several hundred; below that the line is all that is known.
    /// </summary>
    private const double Flat = 0.004;

    public static IReadOnlyList<Fault> Faults(IReadOnlyList<PointPair> pairs, int needed, string map)
    {
        var faults = new List<Fault>();
        for (var i = 0; i < pairs.Count; i++)
            if (!Finite(pairs[i].From) || !Finite(pairs[i].To)) faults.Add(PictureSentences.NotFinite(i + 1));
        if (pairs.Count < needed) faults.Add(PictureSentences.TooFew(pairs.Count, needed, map));
        if (faults.Count > 0) return faults;

        for (var i = 0; i < pairs.Count; i++)
            for (var j = i + 1; j < pairs.Count; j++)
                if (pairs[i].From == pairs[j].From || pairs[i].To == pairs[j].To) faults.Add(PictureSentences.SamePlace(i + 1, j + 1));
        if (faults.Count > 0) return faults;

        if (OnALine(pairs, needed) is { } line) faults.Add(PictureSentences.OnOneLine(line, map));
        return faults;
    }

    // A map that needs n points needs n of which no three are in line; it is enough that one such set exists, and with
    // exactly n given there is only one. Beyond that, all but one on a line is the case that still leaves it open.
    private static string? OnALine(IReadOnlyList<PointPair> pairs, int needed)
    {
        var most = pairs.Count - (needed - 3);
        for (var i = 0; i < pairs.Count; i++)
        {
            for (var j = i + 1; j < pairs.Count; j++)
            {
                foreach (var side in new Func<PointPair, PicturePoint>[] { p => p.From, p => p.To })
                {
                    var (a, b) = (side(pairs[i]), side(pairs[j]));
                    var on = Enumerable.Range(0, pairs.Count).Where(k => k == i || k == j || InLine(a, b, side(pairs[k]))).ToList();
                    if (on.Count >= most) return Names(on);
                }
            }
        }
        return null;
    }

    private static bool InLine(PicturePoint a, PicturePoint b, PicturePoint c)
    {
        var longest = Math.Max(a.DistanceTo(b), Math.Max(b.DistanceTo(c), c.DistanceTo(a)));
        var twiceArea = Math.Abs(((b.X - a.X) * (c.Y - a.Y)) - ((b.Y - a.Y) * (c.X - a.X)));
        return twiceArea <= Flat * longest * longest;
    }

    private static bool Finite(PicturePoint p) => double.IsFinite(p.X) && double.IsFinite(p.Y);

    private static string Names(List<int> at)
    {
        var names = at.Select(i => (i + 1).ToString(CultureInfo.InvariantCulture)).ToList();
        return string.Join(", ", names.SkipLast(1)) + " and " + names[^1];
    }
}
