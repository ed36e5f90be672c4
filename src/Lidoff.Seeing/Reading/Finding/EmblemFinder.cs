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

    // So much of it within lines or the dot: it is that.
    private const double Taken = 0.4;

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
