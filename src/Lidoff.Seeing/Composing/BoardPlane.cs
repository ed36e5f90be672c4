namespace Lidoff.Seeing.Composing;

/// <summary>
/// Of matches between two tiles those that lie on the board. What stands up is nearer to the camera and moves farther from tile to tile:
/// of all groups of matches that moved alike, the board is the one that moved least.
/// </summary>
internal static class BoardPlane
{
    // What blocks of one plane scatter by, px of the sheets.
    private const double Alike = 0.9;
    private const double LeastShare = 0.15;

    // Tiles of one stand at one zoom: its scale is known to three thousandths before anything is matched.
    private const double UsualScale = 0.003;

    /// <summary>The map by the board's matches, and those; null where too few agree.</summary>
    public static (Similarity Map, double Rms, List<PointMatch> Kept)? Of(IReadOnlyList<PointMatch> matches, double middleX, double middleY, int fewest)
    {
        if (SimilarityFit.To(matches, 1, UsualScale) is not { } all) return null;
        var (cx, cy) = all.Map.Apply(middleX, middleY);
        var (dx, dy) = (cx - middleX, cy - middleY);
        var far = Math.Sqrt((dx * dx) + (dy * dy));
        if (far < 1) return (all.Map, all.Rms, [.. matches.Where(match => SimilarityFit.Away(all.Map, match) < 3)]);
        (dx, dy) = (dx / far, dy / far);
        var along = matches.Select(match =>
        {
            var (x, y) = all.Map.Apply(match.X, match.Y);
            var (ex, ey) = (match.ToX - x, match.ToY - y);
            return (Match: match, Along: (ex * dx) + (ey * dy), Across: Math.Abs((ey * dx) - (ex * dy)));
        }).Where(each => each.Across < 2 && Math.Abs(each.Along) < 0.06 * far).OrderBy(each => each.Along).ToList();
        var least = Math.Max(fewest, (int)(LeastShare * along.Count));
        for (var i = 0; i + least <= along.Count; i++)
        {
            var near = along.Skip(i).TakeWhile(each => each.Along <= along[i].Along + (2 * Alike)).Select(each => each.Match).ToList();
            if (near.Count < least) continue;
            if (SimilarityFit.To(near, 0.35, UsualScale) is not { } fit || fit.Kept < fewest) continue;
            return (fit.Map, fit.Rms, [.. matches.Where(match => SimilarityFit.Away(fit.Map, match) < Math.Max(Alike, 3 * fit.Rms))]);
        }

        return null;
    }
}
