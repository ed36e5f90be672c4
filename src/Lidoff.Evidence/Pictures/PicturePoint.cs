namespace Lidoff.Evidence.Pictures;

/// <summary>
/// A point in a named frame; in a picture's own frame in pixels from the outer corner of the top-left pixel after EXIF
/// orientation, x to the right, y down. The centre of the first pixel is (0.5, 0.5).
/// </summary>
public readonly record struct PicturePoint(double X, double Y)
{
    /// <summary>Distance to another point of the same frame.</summary>
    public double DistanceTo(PicturePoint other) => Math.Sqrt(((X - other.X) * (X - other.X)) + ((Y - other.Y) * (Y - other.Y)));
}
