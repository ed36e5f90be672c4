using OpenCvSharp;

namespace Lidoff.Seeing.Composing;

/// <summary>Looks through the overlap of two tiles for other shifts at which they are almost as alike: one period of a row off.</summary>
internal static class PeriodSearch
{
    // Of the overlap's sides: how far a shift is looked for.
    private const double Range = 0.3;

    private const double AlmostAsAlike = 0.6;
    private const double Least = 0.25;
    private const int Most = 4;
    private const int Apart = 6;

    /// <summary>Maps of the second tile at such shifts, most alike first.</summary>
    public static List<Similarity> Of(Tile first, Tile second, Similarity map)
    {
        // From either side: a shift towards less overlap can be tried on one of the two tiles only.
        var found = Shifts(first, second, map).Select(shift => (Map: new Similarity(1, 0, shift.X, shift.Y).After(map), shift.Score)).ToList();
        var back = map.Inverse();
        found.AddRange(Shifts(second, first, back).Select(shift => (new Similarity(1, 0, shift.X, shift.Y).After(back).Inverse(), shift.Score)));
        return [.. found.OrderByDescending(each => each.Score).Take(Most).Select(each => each.Map)];
    }

    private static List<(double X, double Y, double Score)> Shifts(Tile first, Tile second, Similarity map)
    {
        using var shared = Overlap.Of(first, second, map);
        if (shared is null) return [];
        var box = shared.Box;
        var part = new Rect((int)(box.Width * Range / 2), (int)(box.Height * Range / 2), (int)(box.Width * (1 - Range)), (int)(box.Height * (1 - Range)));
        if (part.Width < 24 || part.Height < 24) return [];
        var inner = new Rect(box.X + part.X, box.Y + part.Y, part.Width, part.Height);
        using var template = shared.Second[part];
        using var scores = new Mat();
        Cv2.MatchTemplate(first.Grey, template, scores, TemplateMatchModes.CCoeffNormed);
        var here = At(scores, inner.X, inner.Y);
        var shifts = new List<(double, double, double)>();
        Blank(scores, inner.X, inner.Y);
        for (var i = 0; i < Most; i++)
        {
            Cv2.MinMaxLoc(scores, out _, out var best, out _, out var peak);
            if (best < Math.Max(Least, AlmostAsAlike * here)) break;
            shifts.Add((peak.X - inner.X, peak.Y - inner.Y, best));
            Blank(scores, peak.X, peak.Y);
        }

        return shifts;
    }

    private static double At(Mat scores, int x, int y)
    {
        using var near = scores[Near(scores, x, y)];
        Cv2.MinMaxLoc(near, out _, out double best);
        return best;
    }

    private static void Blank(Mat scores, int x, int y)
    {
        using var near = scores[Near(scores, x, y)];
        near.SetTo(Scalar.All(-1));
    }

    private static Rect Near(Mat scores, int x, int y)
    {
        var (left, top) = (Math.Max(0, x - Apart), Math.Max(0, y - Apart));
        return new(left, top, Math.Min(scores.Width, x + Apart + 1) - left, Math.Min(scores.Height, y + Apart + 1) - top);
    }
}
