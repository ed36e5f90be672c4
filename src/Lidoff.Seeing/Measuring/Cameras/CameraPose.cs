using Lidoff.Evidence.Pictures;
using Lidoff.Numbers;

namespace Lidoff.Seeing.Measuring.Cameras;

/// <summary>
/// One way a camera may have looked at a flat board. Places are counted from the picture's middle in half long sides; the board is the
/// plane z = Z + <see cref="Right"/>·x + <see cref="Down"/>·y before the lens, so that both are tangents of the slant.
/// </summary>
/// <param name="Right">Slant along x: tangent of the angle.</param>
/// <param name="Down">Slant along y.</param>
/// <param name="LogFocal">Natural logarithm of the focal length in half long sides of the picture.</param>
/// <param name="Bend">Radial term: a place at r (half long sides) belongs at r·(1 + Bend·r²). Above zero: barrel.</param>
/// <param name="Aspect">How much larger the pixels' height is than their width, as a share.</param>
internal readonly record struct CameraPose(double Right, double Down, double LogFocal, double Bend, double Aspect)
{
    /// <summary>Number of coefficients.</summary>
    public const int Count = 5;

    // A ray that meets the board this close to the horizon has left every bench.
    private const double LeastDepth = 0.05;

    /// <summary>What one mm above the board takes off the distance along the axis.</summary>
    public double PerHeight => Math.Sqrt(1 + (Right * Right) + (Down * Down));

    /// <summary>Angle between the camera's axis and the board's normal, degrees.</summary>
    public double SlantDegrees => Elementary.Atan(Math.Sqrt((Right * Right) + (Down * Down))) * 180 / Math.PI;

    /// <summary>Relative change of the scale from one end of the long side to the other, along the slope.</summary>
    public double SlopeAcross => 2 * Math.Sqrt((Right * Right) + (Down * Down)) * Elementary.Exp(-LogFocal);

    /// <summary>From coefficients in order.</summary>
    public static CameraPose From(double[] values) => new(values[0], values[1], values[2], values[3], values[4]);

    /// <summary>Distance on the board between two places of the picture, for a board one unit away; not a number where a ray misses the board.</summary>
    public double Unit(in SeenChord chord)
    {
        var focal = Elementary.Exp(LogFocal);
        return Unit(chord, focal);
    }

    /// <summary>The same for a focal length that was worked out before.</summary>
    public double Unit(in SeenChord chord, double focal)
    {
        var (x1, y1, z1) = Place(chord.FromX, chord.FromY, focal);
        var (x2, y2, z2) = Place(chord.ToX, chord.ToY, focal);
        var (dx, dy, dz) = (x2 - x1, y2 - y1, z2 - z1);
        return Math.Sqrt((dx * dx) + (dy * dy) + (dz * dz));
    }

    /// <summary>A place of the picture, in half long sides from its middle, as a place on the board one unit away, in two axes of the board at a right angle.</summary>
    public (double X, double Y) OnBoard(double x, double y, double focal)
    {
        var (px, py, pz) = Place(x, y, focal);
        // First axis (1, 0, Right) normed; second at a right angle to it and to the normal (−Right, −Down, 1).
        var (first, normal) = (Math.Sqrt(1 + (Right * Right)), PerHeight);
        var along = (px + (Right * pz)) / first;
        var across = ((-Right * Down * px) + ((1 + (Right * Right)) * py) + (Down * pz)) / (first * normal);
        return (along, across);
    }

    private (double X, double Y, double Z) Place(double x, double y, double focal)
    {
        (x, y) = (x * (1 - (Aspect / 2)), y * (1 + (Aspect / 2)));
        var grown = (1 + (Bend * ((x * x) + (y * y)))) / focal;
        (x, y) = (x * grown, y * grown);
        var depth = 1 - (Right * x) - (Down * y);
        return depth < LeastDepth ? (double.NaN, double.NaN, double.NaN) : (x / depth, y / depth, 1 / depth);
    }
}
