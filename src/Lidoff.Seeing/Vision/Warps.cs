using Lidoff.Seeing.Composing;
using OpenCvSharp;

namespace Lidoff.Seeing.Vision;

/// <summary>
/// Maps as the vision library wants them. Ours count from the outer corner of the first pixel, its from that pixel's middle; the half
/// pixel between the two is put in here and nowhere else.
/// </summary>
internal static class Warps
{
    /// <summary>Two rows of three for a warp that takes a place of the source to where <paramref name="map"/> says.</summary>
    public static Mat Of(Similarity map)
    {
        var rows = new double[,]
        {
            { map.A, -map.B, map.X + (0.5 * (map.A - map.B)) - 0.5 },
            { map.B, map.A, map.Y + (0.5 * (map.B + map.A)) - 0.5 },
        };
        return Mat.FromArray(rows);
    }

    /// <summary>Warps a sheet by a map into a sheet of a size; outside it is black.</summary>
    public static Mat Warp(Mat sheet, Similarity map, Size size, InterpolationFlags by = InterpolationFlags.Cubic, BorderTypes border = BorderTypes.Constant)
    {
        var warped = new Mat();
        using var rows = Of(map);
        Cv2.WarpAffine(sheet, warped, rows, size, by, border);
        return warped;
    }
}
