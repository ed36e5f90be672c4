namespace Lidoff.Seeing.Measuring;

/// <summary>
/// A place in a picture, px: origin at the outer corner of the top-left pixel after EXIF orientation, x right, y down, so the
/// centre of the first pixel is (0.5, 0.5).
/// </summary>
public readonly record struct PixelPoint(double X, double Y)
{
    /// <summary>Distance to <paramref name="other"/>, px.</summary>
    public double DistanceTo(PixelPoint other) =>
        Math.Sqrt(((other.X - X) * (other.X - X)) + ((other.Y - Y) * (other.Y - Y)));
}
