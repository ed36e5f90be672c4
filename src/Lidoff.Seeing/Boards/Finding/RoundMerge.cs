namespace Lidoff.Seeing.Boards.Finding;

/// <summary>Makes one mark of what was found several times, and rings of dark discs within bright ones.</summary>
internal static class RoundMerge
{
    private const int MostLooks = 4000;

    /// <summary>The marks, by their standing: the best held and steepest first, then from above.</summary>
    public static List<FoundMark> Of(IReadOnlyList<(FoundMark Mark, double Held)> found)
    {
        var sorted = found.OrderByDescending(each => Standing(each)).ThenBy(each => each.Mark.At.Y).ThenBy(each => each.Mark.At.X).Take(MostLooks).ToList();
        var kept = new List<(FoundMark Mark, double Held)>();
        foreach (var each in sorted) if (!kept.Exists(other => Same(other.Mark, each.Mark))) kept.Add(each);
        var marks = kept.ConvertAll(each => each.Mark);
        var rings = new List<FoundMark>();
        var gone = new HashSet<FoundMark>();
        foreach (var dark in marks.Where(mark => mark.Sort == MarkSort.Dark))
        {
            var around = marks.Where(mark => mark.Sort == MarkSort.Bright && mark.RadiusPx > 1.1 * dark.RadiusPx && mark.RadiusPx < 4 * dark.RadiusPx && mark.At.DistanceTo(dark.At) < 0.35 * dark.RadiusPx).ToList();
            if (around.Count == 0) continue;
            rings.Add(dark with { Sort = MarkSort.Ring });
            gone.Add(dark);
            gone.UnionWith(around);
        }

        // A glint in a hole, or the dark rim of a bright land: the larger of two about one middle stands.
        var rest = marks.Where(mark => !gone.Contains(mark)).ToList();
        rest.RemoveAll(mark => rest.Exists(other => other.RadiusPx > mark.RadiusPx && other.Sort != mark.Sort && other.At.DistanceTo(mark.At) < 0.3 * mark.RadiusPx && other.RadiusPx < 3 * mark.RadiusPx));
        return [.. rings.Concat(rest).Where(mark => !rings.Exists(ring => ring != mark && ring.At.DistanceTo(mark.At) < 0.5 * ring.RadiusPx)).OrderByDescending(Rank).ThenBy(mark => mark.At.Y).ThenBy(mark => mark.At.X)];
    }

    // The doubt counts little: a coarse look is held no worse for being blurred. A judgement.
    private static double Standing((FoundMark Mark, double Held) each) => each.Mark.Even + each.Held - (0.27 * each.Mark.UPx / each.Mark.RadiusPx);

    // What is dark in the middle is likelier a hole than a glint or a land.
    private static double Rank(FoundMark mark) => mark.Even * (mark.Sort switch { MarkSort.Ring => 1.5, MarkSort.Dark => 1, _ => 0.75 });

    private static bool Same(FoundMark a, FoundMark b) =>
        a.Sort == b.Sort && a.At.DistanceTo(b.At) < 0.6 * Math.Min(a.RadiusPx, b.RadiusPx) && Math.Max(a.RadiusPx, b.RadiusPx) < 1.5 * Math.Min(a.RadiusPx, b.RadiusPx);
}
