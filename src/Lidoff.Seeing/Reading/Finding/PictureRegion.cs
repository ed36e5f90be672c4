using Lidoff.Evidence.Pictures;
using Lidoff.Numbers;

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
