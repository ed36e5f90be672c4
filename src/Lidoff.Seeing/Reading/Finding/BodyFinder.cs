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
        foreach (var patch in CellPatches.Of(Guard.NotNull(maps).Body, maps.Columns, Half))
        {
            if (!patch.Any(cell => maps.Middle(cell) is var (x, y) && Math.Abs(x - place.X) <= FinderMaps.Cell && Math.Abs(y - place.Y) <= FinderMaps.Cell)) continue;
            var around = Smallest([.. patch.Select(maps.Middle)]);
            cut = patch.Any(cell => cell % maps.Columns == 0 || cell < maps.Columns || cell % maps.Columns == maps.ValidColumns - 1 || cell / maps.Columns == maps.ValidRows - 1);
            return cut || patch.Count * FinderMaps.Cell * FinderMaps.Cell < LeastFill * around.Width * around.Height ? null : around;
        }

        return null;
    }

    /// <summary>Middle of the surest pin-1 dot, px of the sheet; null where there is none.</summary>
    public static PicturePoint? Dot(FinderMaps maps)
    {
        var best = CellPatches.Of(Guard.NotNull(maps).Dot, maps.Columns, Half).MaxBy(patch => patch.Sum(cell => maps.Dot[cell]));
        if (best is null) return null;
        double x = 0, y = 0, sum = 0;
        foreach (var cell in best)
        {
            var ((mx, my), w) = (maps.Middle(cell), maps.Dot[cell]);
            x += w * mx;
            y += w * my;
            sum += w;
        }

        return new(x / sum, y / sum);
    }

    private static PictureRegion Smallest(List<(double X, double Y)> cells)
    {
        var (best, area) = (default(PictureRegion), double.PositiveInfinity);
        for (var degrees = -45; degrees < 45; degrees++)
        {
            var turn = degrees * Math.PI / 180;
            var (c, s) = (Elementary.Cos(turn), Elementary.Sin(turn));
            double left = double.PositiveInfinity, right = double.NegativeInfinity, top = double.PositiveInfinity, foot = double.NegativeInfinity;
            foreach (var (x, y) in cells)
            {
                var (u, v) = ((x * c) + (y * s), (y * c) - (x * s));
                (left, right, top, foot) = (Math.Min(left, u), Math.Max(right, u), Math.Min(top, v), Math.Max(foot, v));
            }

            var (w, h) = (right - left + FinderMaps.Cell, foot - top + FinderMaps.Cell);
            // Of as good ones the least turned.
            if ((w * h) + Math.Abs(degrees) * 1e-6 >= area) continue;
            var (u0, v0) = ((left + right) / 2, (top + foot) / 2);
            (best, area) = (new(new PicturePoint((u0 * c) - (v0 * s), (u0 * s) + (v0 * c)), w, h, turn), (w * h) + Math.Abs(degrees) * 1e-6);
        }

        return best;
    }
}
