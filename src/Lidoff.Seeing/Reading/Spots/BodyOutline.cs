using Lidoff.Evidence.Pictures;
using Lidoff.Numbers;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Reading.Finding;

namespace Lidoff.Seeing.Reading.Spots;

/// <summary>A body's rectangle out of its two sides as they were clicked: from corner to corner, or across its middles.</summary>
public static class BodyOutline
{
    // A picture taken at a slant shows a right angle up to this far from one; more are two lengths of something else. A choice of ours.
    private const double FarthestFromSquare = 30 * Math.PI / 180;

    // Sides that share a corner end within a few px of one another, those across the middles half a side away. A choice of ours.
    private const double SharesACorner = 0.2;

    /// <summary>The rectangle; null where the two do not stand across each other or lie apart.</summary>
    /// <param name="first">One side.</param>
    /// <param name="second">The other side, of the same picture.</param>
    public static PictureRegion? Of(PictureLength first, PictureLength second)
    {
        var (a, b) = (Vector(Guard.NotNull(first)), Vector(Guard.NotNull(second)));
        var (width, height) = (Length(a), Length(b));
        if (width == 0 || height == 0) return null;
        var turn = Elementary.Atan2(a.Y, a.X);
        var across = Math.Abs(((a.X * b.X) + (a.Y * b.Y)) / (width * height));
        if (across > Elementary.Sin(FarthestFromSquare)) return null;
        return Middle(first, second, Math.Min(width, height)) is { } middle ? new PictureRegion(middle, width, height, turn) : null;
    }

    private static PicturePoint? Middle(PictureLength a, PictureLength b, double shorter)
    {
        foreach (var (near, far) in new[] { (a.From, a.To), (a.To, a.From) })
        {
            foreach (var (other, end) in new[] { (b.From, b.To), (b.To, b.From) })
            {
                if (near.DistanceTo(other) <= SharesACorner * shorter) return Between(far, end);
            }
        }

        var (first, second) = (Between(a.From, a.To), Between(b.From, b.To));
        return first.DistanceTo(second) <= shorter / 2 ? Between(first, second) : null;
    }

    private static PicturePoint Between(PicturePoint a, PicturePoint b) => new((a.X + b.X) / 2, (a.Y + b.Y) / 2);

    private static (double X, double Y) Vector(PictureLength length) => (length.To.X - length.From.X, length.To.Y - length.From.Y);

    private static double Length((double X, double Y) vector) => Math.Sqrt((vector.X * vector.X) + (vector.Y * vector.Y));
}
