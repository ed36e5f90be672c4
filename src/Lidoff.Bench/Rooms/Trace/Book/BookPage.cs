namespace Lidoff.Bench.Rooms.Trace.Book;

/// <summary>One of the two pages: a picture as it lies in the drawing, whose pages are all 1,000 units high.</summary>
/// <param name="Picture">The picture.</param>
/// <param name="Left">Its left edge.</param>
/// <param name="Width">Its width.</param>
public sealed record BookPage(BookPicture Picture, double Left, double Width)
{
    /// <summary>Height of every page, units.</summary>
    public const double Height = 1000;

    /// <summary>Units a pixel.</summary>
    public double Scale => Height / Picture.Height;

    /// <summary>Where a pixel of the picture lies in the drawing.</summary>
    public (double X, double Y) At(double x, double y) => (Left + (x * Scale), y * Scale);

    /// <summary>The pixel under a place in the drawing; null when it lies on no part of this page.</summary>
    public (double X, double Y)? Pixel(double x, double y) => x >= Left && x <= Left + Width && y is >= 0 and <= Height ? ((x - Left) / Scale, y / Scale) : null;
}
