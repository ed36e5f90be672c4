using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Measuring;

/// <summary>What measuring needs of a picture: its size after EXIF orientation, px, and whether that orientation mirrors it.</summary>
public sealed record PictureFrame(int Width, int Height, bool Mirrored = false)
{
    /// <summary>True when <paramref name="point"/> lies in the picture or on its edge.</summary>
    public bool Holds(PicturePoint point) => point.X >= 0 && point.Y >= 0 && point.X <= Width && point.Y <= Height;
}
