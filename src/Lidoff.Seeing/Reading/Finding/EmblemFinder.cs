using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Reading.Finding;

/// <summary>
/// Marks on a body that are no text, out of the finder's map of them: cells that hang together, but for specks, for what lies in lines of text and
/// for the pin-1 dot. The thresholds are choices of ours, set on drawn maps.
/// </summary>
public static class EmblemFinder
{
    /// <summary>Most of them that one mark has; the largest are kept.</summary>
    public const int Most = 8;

    private const double Half = 0.5;

    // Fewer cells along its longer side are a speck, a blot or a part of a line.
    private const double LeastSide = 3;

    // How often what stands out of the body beside the text is a mark, where the map does not know it. Measured on drawn tops: docs/design.md.
    private const double Unknown = 0.7;

    // A mark of which the map knows only a part is completed by what stands out there, up to so many times as large.
    private const double MostLarger = 12;

    // So much of it within lines or the dot: it is that.
    private const double Taken = 0.4;

    /// <summary>What the map knows, completed and joined by what else stands out of the body, px of the sheet.</summary>
    /// <param name="sheet">What is looked at.</param>
    /// <param name="maps">The finder's maps.</param>
    /// <param name="body">The body, px of the sheet.</param>
    /// <param name="lines">Lines of text, px of the sheet.</param>
    public static IReadOnlyList<FoundEmblem> Find(FinderSheet sheet, FinderMaps maps, PictureRegion body, IReadOnlyList<PictureRegion> lines)
    {
        var found = Find(maps, lines).ToList();
        foreach (var left in LeftoverFinder.Find(sheet, maps, body, lines, BodyFinder.Dot(maps)?.At))
        {
            var (x0, y0, x1, y1) = Extent(left);
            var at = found.FindIndex(emblem => Extent(emblem.Outline) is var (p0, q0, p1, q1) && Math.Min(x1, p1) > Math.Max(x0, p0) && Math.Min(y1, q1) > Math.Max(y0, q0));
            if (at < 0)
            {
                if (found.Count < Most) found.Add(new(left, Unknown));
                continue;
            }

            var (l0, t0, l1, t1) = Extent(found[at].Outline);
            var both = PictureRegion.Box(Math.Min(x0, l0), Math.Min(y0, t0), Math.Max(x1, l1) - Math.Min(x0, l0), Math.Max(y1, t1) - Math.Min(y0, t0));
            if (both.Width * both.Height < MostLarger * (l1 - l0) * (t1 - t0)) found[at] = found[at] with { Outline = both };
        }

        return found;
    }

    private static (double Left, double Top, double Right, double Foot) Extent(PictureRegion region) =>
        (region.Corners.Min(c => c.X), region.Corners.Min(c => c.Y), region.Corners.Max(c => c.X), region.Corners.Max(c => c.Y));

    /// <summary>What was found, the largest first, px of the sheet.</summary>
    /// <param name="maps">The finder's maps.</param>
    /// <param name="lines">Lines of text, px of the sheet.</param>
    public static IReadOnlyList<FoundEmblem> Find(FinderMaps maps, IReadOnlyList<PictureRegion> lines)
    {
        Guard.NotNull(maps);
        Guard.NotNull(lines);
        var found = new List<(FoundEmblem Emblem, int Cells)>();
        foreach (var patch in maps.Patches(maps.Logo, Half))
        {
            var cells = patch.ConvertAll(maps.Middle);
            var outline = PictureRegion.Around(cells, FinderMaps.Cell);
            if (Math.Max(outline.Width, outline.Height) < LeastSide * FinderMaps.Cell) continue;
            var taken = patch.Where((cell, i) => maps.Dot[cell] >= Half || lines.Any(line => line.Holds(new(cells[i].X, cells[i].Y)))).Count();
            if (taken < Taken * patch.Count) found.Add((new(outline, patch.Sum(cell => maps.Logo[cell]) / patch.Count), patch.Count));
        }

        return [.. found.OrderByDescending(each => each.Cells).Take(Most).Select(each => each.Emblem)];
    }
}
