using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Measuring;

namespace Lidoff.Seeing.Tests.Measuring;

/// <summary>
/// One photographed board with everything known: a pinhole with a full rotation, a radial lens of the usual forward form
/// (x' = x(1 + k·r²), r in half long sides), known lengths and a target at heights, clicks with noise. Written apart from the
/// program's own camera: rotation matrix here, plane slopes there; lens forwards here, backwards there.
/// </summary>
internal sealed class BenchScene
{
    public const int Width = 4000;
    public const int Height = 3000;

    private readonly double[,] turn;
    private readonly double focal;
    private readonly double distance;
    private readonly double lens;

    public BenchScene(double slantDegrees, double azimuthDegrees, double spinDegrees, double distanceInLongSides, double pxPerMm, double lens)
    {
        var (s, c) = (Math.Sin(slantDegrees * Math.PI / 180), Math.Cos(slantDegrees * Math.PI / 180));
        var (sa, ca) = (Math.Sin(azimuthDegrees * Math.PI / 180), Math.Cos(azimuthDegrees * Math.PI / 180));
        // Rodrigues' rotation by the slant about an axis in the picture's plane, after a spin of the board about its normal.
        double[,] lean =
        {
            { (ca * ca * (1 - c)) + c, ca * sa * (1 - c), sa * s },
            { ca * sa * (1 - c), (sa * sa * (1 - c)) + c, -ca * s },
            { -sa * s, ca * s, c },
        };
        var (sp, cp) = (Math.Sin(spinDegrees * Math.PI / 180), Math.Cos(spinDegrees * Math.PI / 180));
        double[,] spin = { { cp, -sp, 0 }, { sp, cp, 0 }, { 0, 0, 1 } };
        turn = new double[3, 3];
        for (var i = 0; i < 3; i++)
        {
            for (var j = 0; j < 3; j++)
            {
                for (var k = 0; k < 3; k++) turn[i, j] += lean[i, k] * spin[k, j];
            }
        }

        focal = distanceInLongSides * Width;
        distance = focal / pxPerMm;
        this.lens = lens;
        PxPerMm = pxPerMm;
    }

    public double PxPerMm { get; }

    /// <summary>Distance along the camera's axis, mm.</summary>
    public double DistanceMm => distance;

    /// <summary>Where a place of the board, mm from the point on the camera's axis, shows; heights towards the camera.</summary>
    public PicturePoint Show(double x, double y, double height)
    {
        double[] at = [x, y, -height];
        var (u, v, w) = (Row(0, at), Row(1, at), distance + Row(2, at));
        var (px, py) = (focal * u / w / (Width / 2.0), focal * v / w / (Width / 2.0));
        var grown = 1 + (lens * ((px * px) + (py * py)));
        return new((Width / 2.0) + (px * grown * Width / 2), (Height / 2.0) + (py * grown * Width / 2));
    }

    /// <summary>A chord of the board that shows between two lengths: ends in mm, both inside the picture.</summary>
    public (double X1, double Y1, double X2, double Y2) Chord(Random random, double leastPx, double mostPx, double height)
    {
        var (halfX, halfY) = (Width / 2.0 / PxPerMm, Height / 2.0 / PxPerMm);
        while (true)
        {
            var (x1, y1) = (((random.NextDouble() * 2) - 1) * halfX, ((random.NextDouble() * 2) - 1) * halfY);
            var (x2, y2) = (((random.NextDouble() * 2) - 1) * halfX, ((random.NextDouble() * 2) - 1) * halfY);
            var (a, b) = (Show(x1, y1, height), Show(x2, y2, height));
            if (Inside(a) && Inside(b) && a.DistanceTo(b) >= leastPx && a.DistanceTo(b) <= mostPx) return (x1, y1, x2, y2);
        }
    }

    /// <summary>A place as somebody clicks it.</summary>
    public static PicturePoint Clicked(Random random, PicturePoint at, double click) => new(
        Math.Clamp(at.X + (click * Normal(random)), 0, Width), Math.Clamp(at.Y + (click * Normal(random)), 0, Height));

    public static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    private static bool Inside(PicturePoint at) => at.X >= 0 && at.Y >= 0 && at.X <= Width && at.Y <= Height;

    private double Row(int i, double[] at) => (turn[i, 0] * at[0]) + (turn[i, 1] * at[1]) + (turn[i, 2] * at[2]);
}
