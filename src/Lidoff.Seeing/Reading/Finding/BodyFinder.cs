using Lidoff.Evidence.Pictures;
using Lidoff.Numbers;
using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Reading.Finding;

/// <summary>A body's top and the pin-1 dot out of the finder's maps.</summary>
public static class BodyFinder
{
    private const double Half = 0.5;

    // A rectangle's top fills its smallest rectangle; less than this is no body.
    private const double LeastFill = 0.7;

    /// <summary>
    /// The smallest rectangle around the body that holds a place, px of the sheet, its turn within ±45°; null where there is none, or where it
    /// runs out of the sheet (so that more of the picture is wanted), said by <paramref name="cut"/>.
    /// </summary>
    public static PictureRegion? Find(FinderMaps maps, PicturePoint place, out bool cut)
    {
        cut = false;
        foreach (var patch in Guard.NotNull(maps).Patches(maps.Body, Half))
        {
            if (!patch.Any(cell => maps.Middle(cell) is var (x, y) && Math.Abs(x - place.X) <= FinderMaps.Cell && Math.Abs(y - place.Y) <= FinderMaps.Cell)) continue;
            var around = PictureRegion.Around([.. patch.Select(maps.Middle)], FinderMaps.Cell);
            cut = patch.Any(cell => cell % maps.Columns == 0 || cell < maps.Columns || cell % maps.Columns == maps.ValidColumns - 1 || cell / maps.Columns == maps.ValidRows - 1);
            return cut || patch.Count * FinderMaps.Cell * FinderMaps.Cell < LeastFill * around.Width * around.Height ? null : around;
        }

        return null;
    }

    /// <summary>The surest pin-1 dot, px of the sheet; null where there is none.</summary>
    public static FoundDot? Dot(FinderMaps maps)
    {
        var best = Guard.NotNull(maps).Patches(maps.Dot, Half).MaxBy(patch => patch.Sum(cell => maps.Dot[cell]));
        if (best is null) return null;
        double x = 0, y = 0, sum = 0;
        foreach (var cell in best)
        {
            var ((mx, my), w) = (maps.Middle(cell), maps.Dot[cell]);
            x += w * mx;
            y += w * my;
            sum += w;
        }

        return new(new(x / sum, y / sum), best.Max(cell => maps.Dot[cell]));
    }
}
