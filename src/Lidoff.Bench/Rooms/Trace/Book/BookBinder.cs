using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Boards;
using Lidoff.Telling.Dossiers;

namespace Lidoff.Bench.Rooms.Trace.Book;

/// <summary>Lays two pictures into the book: flat on their common board where they have one, else as they were taken.</summary>
internal static class BookBinder
{
    // A strip of board would make a page that nobody can read; then the pictures are shown as they were taken.
    private const double LongestPage = 6;

    /// <summary>The pages, and in words by what they lie on one board; empty words where they do not.</summary>
    public static (BookPage? Left, BookPage? Right, string Laid) Bind(
        OpenDossier dossier, BookPicture? left, BookPicture? right, BookWay way, IReadOnlyList<(string Sha256, PicturePoint At)> places)
    {
        if (left is not null && right is not null && Flat(dossier, left, right, way, places) is { } bound) return bound;
        var first = left is null ? null : new BookPage(left, 0, WidthOf(left));
        return (first, right is null ? null : new BookPage(right, first?.Width ?? 0, WidthOf(right)), "");
    }

    private static double WidthOf(BookPicture picture) => BookPage.Height * picture.Width / picture.Height;

    private static (BookPage Left, BookPage Right, string Laid)? Flat(
        OpenDossier dossier, BookPicture left, BookPicture right, BookWay way, IReadOnlyList<(string Sha256, PicturePoint At)> places)
    {
        if (dossier.Model.Board(left.Sha256)?.Laid is not { } board || board.Picture(left.Sha256) is not { } first || board.Picture(right.Sha256) is not { } second) return null;
        PicturePoint[] In(BookPicture picture) => [.. places.Where(place => place.Sha256 == picture.Sha256).Select(place => place.At)];
        if (BoardSheet.Common((first, left.Width, left.Height), (second, right.Width, right.Height), (In(left), In(right))) is not { } sheet) return null;
        if (sheet.Aspect is > LongestPage or < 1 / LongestPage) return null;
        var width = BookPage.Height * sheet.Aspect;
        BookPage Page(BookPicture picture, LaidPicture laid, double at)
        {
            // As through glass everything is seen from the top; in the open book each side is seen from its own.
            var seen = sheet with { FromBelow = way == BookWay.Open && laid.Mirrored };
            return new(picture, at, width, new(laid.ToPicture.Matrix.After(seen.ToBoard(BookPage.Height).Matrix)));
        }

        return (Page(left, first, 0), Page(right, second, way == BookWay.Open ? width : 0), TraceSentences.Laid(board, first, second));
    }
}
