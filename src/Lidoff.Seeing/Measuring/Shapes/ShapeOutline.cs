using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Measuring.Shapes;

/// <summary>
/// An outline by its corners, walked round in order and closed by itself. One whose sides cross or touch has no one area: what lies
/// on the other side of a crossing would be taken away from it in silence.
/// </summary>
internal static class ShapeOutline
{
    /// <summary>The first two sides that meet elsewhere than at a corner they share, by the numbers of the corners they begin at, from 0; null where none do.</summary>
    /// <param name="corners">Three or more, no two neighbours the same.</param>
    public static (int One, int Other)? Meeting(IReadOnlyList<PicturePoint> corners)
    {
        for (var i = 0; i < corners.Count; i++)
        {
            for (var j = i + 1; j < corners.Count; j++)
            {
                var (a, b) = (corners[i], corners[i + 1]);
                var (c, d) = (corners[j], corners[(j + 1) % corners.Count]);
                var neighbours = j == i + 1 || (i == 0 && j == corners.Count - 1);
                if (neighbours ? Back(a, b, c, d) : Meet(a, b, c, d)) return (i, j);
            }
        }

        return null;
    }

    /// <summary>Neighbouring sides share a corner; they meet elsewhere only where one goes back along the other.</summary>
    private static bool Back(PicturePoint a, PicturePoint b, PicturePoint c, PicturePoint d)
    {
        var (corner, one, other) = b == c ? (b, a, d) : (a, b, c);
        return Turn(one, corner, other) == 0 && ((one.X - corner.X) * (other.X - corner.X)) + ((one.Y - corner.Y) * (other.Y - corner.Y)) > 0;
    }

    private static bool Meet(PicturePoint a, PicturePoint b, PicturePoint c, PicturePoint d)
    {
        var (ofC, ofD, ofA, ofB) = (Turn(a, b, c), Turn(a, b, d), Turn(c, d, a), Turn(c, d, b));
        if (ofC != ofD && ofA != ofB && ofC * ofD <= 0 && ofA * ofB <= 0) return true;
        return (ofC == 0 && Within(a, b, c)) || (ofD == 0 && Within(a, b, d)) || (ofA == 0 && Within(c, d, a)) || (ofB == 0 && Within(c, d, b));
    }

    private static int Turn(PicturePoint a, PicturePoint b, PicturePoint c) => Math.Sign(((b.X - a.X) * (c.Y - a.Y)) - ((b.Y - a.Y) * (c.X - a.X)));

    private static bool Within(PicturePoint a, PicturePoint b, PicturePoint p) =>
        p.X >= Math.Min(a.X, b.X) && p.X <= Math.Max(a.X, b.X) && p.Y >= Math.Min(a.Y, b.Y) && p.Y <= Math.Max(a.Y, b.Y);
}
