using Lidoff.Seeing.Vision;
using OpenCvSharp;

namespace Lidoff.Seeing.Composing;

/// <summary>Where one tile covers another's sheet.</summary>
internal static class Overlap
{
    /// <summary>255 where <paramref name="second"/> under <paramref name="map"/> covers a sheet of a size.</summary>
    public static Mat Of(Tile second, Similarity map, Size size)
    {
        using var whole = new Mat(second.Grey.Size(), MatType.CV_8U, Scalar.All(255));
        return Warps.Warp(whole, map, size, InterpolationFlags.Nearest);
    }
}
