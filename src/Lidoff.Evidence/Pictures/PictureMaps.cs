using Lidoff.Numbers;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Pictures;

/// <summary>The simple maps, each under the name of what was done to the picture.</summary>
public static class PictureMaps
{
    /// <summary>Nothing but another name for the frame.</summary>
    public static Projective Same(string from, string to) => new(from, to, Matrix3.One);

    /// <summary>A crop whose outer corner lies at <paramref name="corner"/> of the picture.</summary>
    public static Projective Crop(string from, string to, PicturePoint corner) =>
        new(from, to, new(1, 0, -Guard.Finite(corner.X), 0, 1, -Guard.Finite(corner.Y), 0, 0, 1));

    /// <summary>A picture resampled to another size. Outer corners stay outer corners, so there is no half-pixel shift.</summary>
    public static Projective Resampled(string from, string to, PictureSize before, PictureSize after) =>
        Scaled(from, to, Guard.Positive(after.Width) / Guard.Positive(before.Width), Guard.Positive(after.Height) / Guard.Positive(before.Height));

    /// <summary>Factors above zero along x and y; 1/(pixels per mm) makes millimetres of pixels.</summary>
    public static Projective Scaled(string from, string to, double x, double y) =>
        new(from, to, new(Guard.Positive(x), 0, 0, 0, Guard.Positive(y), 0, 0, 0, 1));

    /// <summary>A turn clockwise on the screen, in degrees, about <paramref name="about"/>, which stays in place.</summary>
    public static Projective Turned(string from, string to, double degrees, PicturePoint about)
    {
        var (sin, cos) = SinCos(Guard.Finite(degrees));
        // y runs down, so the usual counter-clockwise matrix turns clockwise to the eye.
        return new(from, to, new(
            cos, -sin, about.X - (cos * about.X) + (sin * about.Y),
            sin, cos, about.Y - (sin * about.X) - (cos * about.Y),
            0, 0, 1));
    }

    /// <summary>Mirrored left to right about the vertical line at <paramref name="axisX"/>; half the width keeps a picture in its frame.</summary>
    public static Projective Mirrored(string from, string to, double axisX) =>
        new(from, to, new(-1, 0, 2 * Guard.Finite(axisX), 0, 1, 0, 0, 0, 1));

    /// <summary>x' = a·x + b·y + c, y' = d·x + e·y + f.</summary>
    public static Projective Affine(string from, string to, double a, double b, double c, double d, double e, double f) =>
        new(from, to, new(a, b, c, d, e, f, 0, 0, 1));

    private static (double Sin, double Cos) SinCos(double degrees)
    {
        // Quarter turns are exact: a picture turned four times is the picture.
        var turn = degrees - (360 * Math.Floor(degrees / 360));
        return turn switch
        {
            0 => (0, 1),
            90 => (1, 0),
            180 => (0, -1),
            270 => (-1, 0),
            _ => (Elementary.Sin(turn * Math.PI / 180), Elementary.Cos(turn * Math.PI / 180)),
        };
    }
}
