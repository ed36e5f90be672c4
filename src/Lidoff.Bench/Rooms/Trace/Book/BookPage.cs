using Lidoff.Evidence.Pictures;

namespace Lidoff.Bench.Rooms.Trace.Book;

/// <summary>One of the two pages: a picture as it lies in the drawing, whose pages are all 1,000 units high.</summary>
/// <param name="Picture">The picture.</param>
/// <param name="Left">Its left edge.</param>
/// <param name="Width">Its width.</param>
/// <param name="Lay">How it lies flat on the board; null where it is shown as it was taken.</param>
public sealed record BookPage(BookPicture Picture, double Left, double Width, BookLay? Lay = null)
{
    /// <summary>Height of every page, units.</summary>
    public const double Height = 1000;

    /// <summary>Units a pixel, of a picture shown as it was taken.</summary>
    public double Scale => Height / Picture.Height;

    /// <summary>Where a pixel of the picture lies in the drawing.</summary>
    public (double X, double Y) At(double x, double y)
    {
        if (Lay is null) return (Left + (x * Scale), y * Scale);
        var at = Lay.ToPicture.Inverse().Map(new(x, y));
        return (Left + at.X, at.Y);
    }

    /// <summary>The pixel under a place in the drawing; null when it lies on no part of this page.</summary>
    public (double X, double Y)? Pixel(double x, double y)
    {
        if (!(x >= Left && x <= Left + Width && y is >= 0 and <= Height)) return null;
        if (Lay is null) return ((x - Left) / Scale, y / Scale);
        var at = Lay.ToPicture.Map(new PicturePoint(x - Left, y));
        return at.X >= 0 && at.Y >= 0 && at.X <= Picture.Width && at.Y <= Picture.Height ? (at.X, at.Y) : null;
    }
}
