using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Measuring;

/// <summary>An upright box in a picture: left, top, width and height, px; width and height above zero.</summary>
public readonly record struct PixelBox(double X, double Y, double Width, double Height)
{
    /// <summary>Its middle.</summary>
    public PicturePoint Middle => new(X + (Width / 2), Y + (Height / 2));
}
