using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Boards;

/// <summary>How board places and lengths move with what they are computed from.</summary>
internal static class BoardSlopes
{
    /// <summary>Where a picture's point lies on the board, mm, and how that moves with each coefficient (2 × 8) and with the click.</summary>
    public static (PicturePoint Place, double[,] ByView, Jacobian ByClick) Place(BoardView view, PicturePoint at)
    {
        var place = view.Find(at);
        var (by, point) = view.Slopes(place);
        var d = point.Determinant;
        // Held at one pixel: ∂p/∂coefficient + ∂p/∂place · dplace = 0.
        var back = new Jacobian(point.YY / d, -point.XY / d, -point.YX / d, point.XX / d);
        var slopes = new double[2, BoardView.Count];
        for (var i = 0; i < BoardView.Count; i++)
        {
            slopes[0, i] = -((back.XX * by[0, i]) + (back.XY * by[1, i]));
            slopes[1, i] = -((back.YX * by[0, i]) + (back.YY * by[1, i]));
        }

        return (place, slopes, back);
    }

    /// <summary>The board length between two places of a picture, mm, and how it moves with each coefficient.</summary>
    public static (double Mm, double[] ByView) Length(BoardView view, PicturePoint from, PicturePoint to)
    {
        var (a, b) = (Place(view, from), Place(view, to));
        var mm = a.Place.DistanceTo(b.Place);
        var (x, y) = ((b.Place.X - a.Place.X) / mm, (b.Place.Y - a.Place.Y) / mm);
        return (mm, [.. Enumerable.Range(0, BoardView.Count).Select(i => (x * (b.ByView[0, i] - a.ByView[0, i])) + (y * (b.ByView[1, i] - a.ByView[1, i])))]);
    }
}
