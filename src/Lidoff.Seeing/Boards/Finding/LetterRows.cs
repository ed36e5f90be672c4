using Lidoff.Numbers;
using Lidoff.Seeing.Measuring.Edges;

namespace Lidoff.Seeing.Boards.Finding;

/// <summary>
/// Tells round things that are letters, or the white within one, from holes: a letter stands by itself in a row of others as high as itself. What is printed beside a board, a caption or a
/// ruler's numerals, is the same in pictures of both its sides, and would lay them on one another the wrong way round.
/// </summary>
internal sealed class LetterRows
{
    // Side of a window, in its own samples, and how many of them a mark's radius or a letter has there.
    private const int Side = 72;
    private const double PerRadius = 3.2;
    private const double PerLetter = 9;

    // The white of an 8 is a sixth of the letter's height in radius, the end of a thin stroke a twelfth.
    private const double MostHigh = 16;

    // What is larger than this beside the mark is a letter of thin strokes, which cover little of its box; else copper.
    private const double HighAbout = 8;
    private const double Thin = 0.4;

    // Letters are about as high as wide, seen along their row.
    private const double LeastHigh = 0.6;

    // Letters of a row are as high as one another, and their middles keep to the line, to a sample of the window and a share of the height: blur and what hangs below the line.
    private const double HeightApart = 0.17;
    private const double MiddleApart = 0.12;
    private const double Sample = 1.1;

    // How far the next letter's middle lies, in heights: narrow ones nearly touch, and a word may end between.
    private const double LeastAway = 0.4;
    private const double MostAway = 2.1;
    private const double OneLine = 0.17;

    // What lands of a row share, laid on one another, of what either covers; and they are as wide as high, where zeros are not.
    private const double SameShape = 0.75;
    private const double Round = 0.84;

    // As even as this within and around are holes and lands; whites of letters on rendered boards come to 0.87.
    private const double Plain = 0.9;

    // Where ink is parted from paper, as a share of the way to it: thin strokes beside a thick one are lighter.
    private static readonly double[] Shares = [0.5, 0.3];

    private static readonly IReadOnlyList<(int X, int Y)> Itself = [(0, 0)];
    private static readonly IReadOnlyList<(double Cos, double Sin)> Rays = [.. Enumerable.Range(0, 16).Select(i => (Elementary.Cos(Math.PI * i / 8), Elementary.Sin(Math.PI * i / 8)))];
    private static readonly IReadOnlyList<(int X, int Y)> Around = [.. Rays.Select(ray => ((int)Math.Round(Beyond * PerRadius * ray.Cos), (int)Math.Round(Beyond * PerRadius * ray.Sin))).Distinct()];

    // Just outside of a mark, in radii.
    private const double Beyond = 1.45;

    private readonly GreyPicture grey;

    private LetterRows(GreyPicture grey) => this.grey = grey;

    /// <summary>The marks that are no letters, in their order, looked at one by one as they are asked for.</summary>
    public static IEnumerable<FoundMark> Without(GreyPicture grey, IEnumerable<FoundMark> marks)
    {
        var rows = new LetterRows(grey);
        return marks.Where(mark => !rows.IsLetter(mark));
    }

    private bool IsLetter(FoundMark mark)
    {
        if (mark.Even > Plain) return false;
        var (x, y, radius) = (mark.At.X / grey.PxPerPx, mark.At.Y / grey.PxPerPx, mark.RadiusPx / grey.PxPerPx);
        var dark = mark.Sort != MarkSort.Bright;
        var (within, around) = Levels(x, y, radius);
        foreach (var share in Shares)
        {
            // The letter itself; or the white within one, whose ink is the other way.
            if (IsLetter(x, y, radius, around + (share * (within - around)), dark, Itself) || IsLetter(x, y, radius, within + (share * (around - within)), !dark, Around)) return true;
        }

        return false;
    }

    private (double Within, double Around) Levels(double x, double y, double radius)
    {
        var (within, around) = ((double)grey.Between(x, y), new List<float>(Rays.Count));
        foreach (var (cos, sin) in Rays)
        {
            within += grey.Between(x + (0.5 * radius * cos), y + (0.5 * radius * sin));
            around.Add(grey.Between(x + (Beyond * radius * cos), y + (Beyond * radius * sin)));
        }

        around.Sort();
        return (within / (1 + Rays.Count), around[Rays.Count / 2]);
    }

    private bool IsLetter(double x, double y, double radius, double threshold, bool dark, IReadOnlyList<(int X, int Y)> starts)
    {
        var step = radius / PerRadius;
        if (InkShape.About(grey, x, y, step, starts, threshold, dark, (int)(MostHigh * PerRadius)) is not { } letter) return false;
        if (letter.Longest < 1.5 * PerRadius || letter.IsDisc || letter.IsRoundAbout(0, 0)) return false;
        if (letter.Longest > HighAbout * PerRadius && letter.Cover > Thin) return false;
        var shrunk = PerLetter / letter.Longest;
        var shapes = InkWindow.Of(grey, x + (letter.X * step), y + (letter.Y * step), step / shrunk, Side, threshold).Shapes(dark).FindAll(shape => shape.Whole);
        var (px, py) = ((letter.Pixels[0].X - letter.X) * shrunk, (letter.Pixels[0].Y - letter.Y) * shrunk);
        return shapes.MinBy(shape => shape.Pixels.Min(pixel => Math.Abs(pixel.X - px) + Math.Abs(pixel.Y - py))) is { } mine && StandsInRow(mine, shapes.FindAll(shape => shape != mine && shape.Longest > 0.3 * PerLetter));
    }

    // Towards each of the others: those that stand in line with both and are as high make a row. All alike and round they are lands.
    private static bool StandsInRow(InkShape mine, List<InkShape> others)
    {
        foreach (var next in others)
        {
            var (dx, dy) = (next.X - mine.X, next.Y - mine.Y);
            var away = Math.Sqrt((dx * dx) + (dy * dy));
            if (away < 1) continue;
            var (ux, uy) = (dx / away, dy / away);
            var (low, high) = mine.Across(ux, uy);
            var height = high - low;
            if (height < LeastHigh * PerLetter || away < LeastAway * height || away > MostAway * height) continue;
            var row = others.FindAll(other => InLine(mine, other, ux, uy, (low, high)));
            if (row.Count >= 2 && (row.Count(other => other.Alike(mine) < SameShape) >= 2 || mine.Narrow(ux, uy) < Round)) return true;
        }

        return false;
    }

    private static bool InLine(InkShape mine, InkShape other, double ux, double uy, (double Low, double High) mineAcross)
    {
        var (dx, dy, height) = (other.X - mine.X, other.Y - mine.Y, mineAcross.High - mineAcross.Low);
        var (along, beside) = (Math.Abs((dx * ux) + (dy * uy)), Math.Abs((dy * ux) - (dx * uy)));
        if (along < LeastAway * height || beside > (OneLine * along) + Sample) return false;
        var (low, high) = other.Across(ux, uy);
        return Math.Abs(high - low - height) <= (HeightApart * height) + Sample && Math.Abs(low + high - mineAcross.Low - mineAcross.High) / 2 <= (MiddleApart * height) + Sample;
    }
}
