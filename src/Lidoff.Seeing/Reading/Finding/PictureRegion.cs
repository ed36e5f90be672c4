using Lidoff.Evidence.Pictures;
using Lidoff.Numbers;
using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Reading.Finding;

/// <summary>
/// A rectangle anywhere in a picture, at any turn: its middle, its sides in px, and the angle of its width, radians clockwise as seen from
/// the picture's x axis.
/// </summary>
public readonly record struct PictureRegion(PicturePoint Middle, double Width, double Height, double Turn)
{
    /// <summary>Unit vector along its width.</summary>
    public (double X, double Y) Along => (Elementary.Cos(Turn), Elementary.Sin(Turn));

    /// <summary>Unit vector along its height, from its top to its foot.</summary>
    public (double X, double Y) Down => (-Elementary.Sin(Turn), Elementary.Cos(Turn));

    /// <summary>Its corners, clockwise as seen from its own top left.</summary>
    public IReadOnlyList<PicturePoint> Corners => [At(-0.5, -0.5), At(0.5, -0.5), At(0.5, 0.5), At(-0.5, 0.5)];

    /// <summary>An upright box.</summary>
    public static PictureRegion Box(double left, double top, double width, double height) => new(new(left + (width / 2), top + (height / 2)), width, height, 0);

    /// <summary>The smallest rectangle around square cells, to a degree; its turn is within ±45°, and of equally good ones the least turned.</summary>
    /// <param name="cells">Middles of the cells, one at least.</param>
    /// <param name="side">Side of a cell, px.</param>
    public static PictureRegion Around(IReadOnlyList<(double X, double Y)> cells, double side)
    {
        Guard.That(Guard.NotNull(cells).Count > 0, "one cell at least");
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

            var (w, h) = (right - left + side, foot - top + side);
            // Equal but for rounding.
            if ((w * h) + (Math.Abs(degrees) * 1e-6) >= area) continue;
            var (u0, v0) = ((left + right) / 2, (top + foot) / 2);
            (best, area) = (new(new PicturePoint((u0 * c) - (v0 * s), (u0 * s) + (v0 * c)), w, h, turn), (w * h) + (Math.Abs(degrees) * 1e-6));
        }

        return best;
    }

    /// <summary>Two pieces of one line as one: from the first's beginning to the second's end, as high as both by their widths.</summary>
    public static PictureRegion InARow(PictureRegion first, PictureRegion second)
    {
        var (start, end) = (first.At(-0.5, 0), second.At(0.5, 0));
        var (a, b) = (first.Width / (first.Width + second.Width), second.Width / (first.Width + second.Width));
        return new(new PicturePoint((start.X + end.X) / 2, (start.Y + end.Y) / 2), start.DistanceTo(end), (a * first.Height) + (b * second.Height), Elementary.Atan2(end.Y - start.Y, end.X - start.X));
    }

    /// <summary>A place in it: 0, 0 is its middle, ±½ its sides.</summary>
    public PicturePoint At(double x, double y)
    {
        var ((ax, ay), (dx, dy)) = (Along, Down);
        return new(Middle.X + (x * Width * ax) + (y * Height * dx), Middle.Y + (x * Width * ay) + (y * Height * dy));
    }

    /// <summary>Where a point of the picture lies in it, px from its middle along its width and height.</summary>
    public (double X, double Y) Inside(PicturePoint point)
    {
        var ((ax, ay), (dx, dy)) = (Along, Down);
        var (x, y) = (point.X - Middle.X, point.Y - Middle.Y);
        return ((x * ax) + (y * ay), (x * dx) + (y * dy));
    }

    /// <summary>True when a point of the picture lies in it.</summary>
    public bool Holds(PicturePoint point) => Inside(point) is var (x, y) && Math.Abs(x) <= Width / 2 && Math.Abs(y) <= Height / 2;

    /// <summary>Larger on every side by so many px.</summary>
    public PictureRegion Grown(double px) => this with { Width = Math.Max(1, Width + (2 * px)), Height = Math.Max(1, Height + (2 * px)) };

    /// <summary>The same rectangle seen from its other end.</summary>
    public PictureRegion TurnedRound() => this with { Turn = Angles.Whole(Turn + Math.PI) };
}
