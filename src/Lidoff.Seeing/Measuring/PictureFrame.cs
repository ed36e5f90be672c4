using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Measuring;

/// <summary>
/// What measuring needs of a picture: its size after EXIF orientation, px; whether that orientation mirrors it; the lens's focal
/// length in long sides of the picture where the camera wrote it; and whether a program may have cropped it since, which makes that length longer.
/// </summary>
public sealed record PictureFrame(int Width, int Height, bool Mirrored = false, double? FocalLongSides = null, bool Worked = false)
{
    /// <summary>True when <paramref name="point"/> lies in the picture or on its edge.</summary>
    public bool Holds(PicturePoint point) => point.X >= 0 && point.Y >= 0 && point.X <= Width && point.Y <= Height;
}
