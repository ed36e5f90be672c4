using Lidoff.Bench.Showing;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Kinds;
using Lidoff.Telling.Dossiers;
using Lidoff.Tracing.Kinds;

namespace Lidoff.Bench.Rooms.Trace.Book;

/// <summary>
/// Both sides of a board as an open book: a picture of the top at the left, one of the bottom at the right, hinged at their common
/// edge. The bottom is as it was photographed, which is how a page looks when it is turned. Where landmarks lay both pictures on one
/// board, both pages are drawn flat at one scale, so that what lies over against each other is as far from the hinge; then they can lie
/// on each other too.
/// </summary>
/// <param name="Left">The left page; null where no picture was chosen.</param>
/// <param name="Right">The right page.</param>
/// <param name="Points">Spots and pads that lie on the pages, in natural order.</param>
/// <param name="Strings">Touches that have at least one end there, in the order they were noted.</param>
/// <param name="Loose">How many touches have no end there.</param>
/// <param name="Pictures">What could lie in the book.</param>
/// <param name="Laid">By what the pages lie on one board, in words; empty where they are shown as they were taken.</param>
/// <param name="Way">Whether they lie side by side or on each other.</param>
public sealed record BookView(
    BookPage? Left, BookPage? Right, ValueList<BookPoint> Points, ValueList<BookString> Strings, int Loose, ValueList<BookPicture> Pictures, string Laid = "", BookWay Way = BookWay.Open)
{
    private const double Empty = 40;

    // Tags stand beside their point and not over it; a fortieth of the page's height each.
    private const double TagX = 34;
    private const double TagY = 26;

    /// <summary>Width of the drawing, units.</summary>
    public double Width => Right is not null ? Right.Left + Right.Width : Left?.Width ?? Empty;

    /// <summary>The page of a picture; null when it is on neither.</summary>
    public BookPage? PageOf(string sha256) => Left?.Picture.Sha256 == sha256 ? Left : Right?.Picture.Sha256 == sha256 ? Right : null;

    /// <summary>The point next to a place in the drawing; null when none is within <paramref name="reach"/> units.</summary>
    public BookPoint? Near(double x, double y, double reach = 30) => Points
        .Select(point => (point, Distance: Math.Sqrt(((point.X - x) * (point.X - x)) + ((point.Y - y) * (point.Y - y)))))
        // A pad sits inside its part: of two that are near, the pad is meant.
        .Where(pair => pair.Distance <= reach).OrderBy(pair => pair.point.Pad ? 0 : 1).ThenBy(pair => pair.Distance).Select(pair => pair.point).FirstOrDefault();

    /// <summary>The page under a place in the drawing, with the pixel of its picture; where both lie there, the right one only if <paramref name="other"/> is true.</summary>
    public (BookPage Page, double X, double Y)? Under(double x, double y, bool other = false)
    {
        foreach (var page in other ? new[] { Right, Left } : [Left, Right])
        {
            if (page?.Pixel(x, y) is { } pixel) return (page, pixel.X, pixel.Y);
        }

        return null;
    }

    /// <summary>
    /// The book as the dossier stands, with the pictures named by their hashes; null or unknown takes, for each side, the picture in
    /// which most was pointed at, the last of equals; where one side alone is noted, the only picture without a side stands for the other. Pictures that share no board lie side by side whatever <paramref name="way"/> says.
    /// </summary>
    public static BookView Of(OpenDossier dossier, string? left = null, string? right = null, BookWay way = BookWay.Open)
    {
        var places = Places(dossier);
        var pictures = PicturesOf(dossier, places);
        var top = pictures.Find(picture => picture.Sha256 == left) ?? Best(pictures, "top");
        var bottom = pictures.Find(picture => picture.Sha256 == right && picture != top) ?? Best(pictures.Where(picture => picture != top), "bottom");
        // Of two sides one was said: the only picture without one is the other.
        if (top is null != bottom is null && pictures.FindAll(picture => picture.Side.Length == 0) is [var rest]) (top, bottom) = (top ?? rest, bottom ?? (rest == top ? null : rest));
        var (first, second, laid) = BookBinder.Bind(dossier, top, bottom, way, [.. places.Where(place => place.X is not null).Select(place => (place.Sha256, new PicturePoint(place.X!.Value, place.Y!.Value)))]);
        var points = PointsOf(places, [.. new[] { first, second }.OfType<BookPage>()]);
        var (strings, loose) = StringsOf(dossier, points);
        return new(first, second, [.. points.Values.OrderBy(point => point.Name, NaturalOrder.Instance)], [.. strings], loose, [.. pictures], laid, laid.Length > 0 ? way : BookWay.Open);
    }

    private static BookPicture? Best(IEnumerable<BookPicture> pictures, string side) => pictures.Where(picture => picture.Side == side).OrderBy(picture => picture.Placed).LastOrDefault();

    private static List<BookPicture> PicturesOf(OpenDossier dossier, List<Place> places)
    {
        var sides = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var said in dossier.Session.View.Live<PictureSighting>().Select(each => each.Value).Where(said => said.Side is PictureSide.Top or PictureSide.Bottom))
        {
            if (dossier.Model.Picture(said.File) is { Found: true } file) sides[file.Sha256] = said.Side == PictureSide.Top ? "top" : "bottom";
        }

        return
        [
            .. dossier.Session.View.Live<FileAdded>().Select(file => file.Value).Where(file => file.Type.StartsWith("image/", StringComparison.Ordinal)).DistinctBy(file => file.Sha256)
                .Select(file => (file, Header: dossier.Picture(file.Sha256, file.Name))).Where(pair => pair.Header.Ok)
                .Select(pair => new BookPicture(pair.file.Sha256, pair.file.Name, sides.GetValueOrDefault(pair.file.Sha256, ""), pair.Header.Value.Width, pair.Header.Value.Height, places.Count(place => place.Sha256 == pair.file.Sha256))),
        ];
    }

    private static List<Place> Places(OpenDossier dossier)
    {
        var view = dossier.Session.View;
        var spots = view.Live<SpotSighting>().Select(each => each.Value).Where(spot => spot.Picture.Length > 0)
            .Select(spot => (spot.Picture, new Place("", spot.Spot, spot.Role, false, spot.Middle?.X, spot.Middle?.Y)));
        var pads = view.Live<PadSighting>().Select(each => each.Value).Where(pad => pad.At is not null)
            .Select(pad => (pad.Picture, new Place("", pad.Point.Text, pad.Name, true, pad.At!.Value.X, pad.At.Value.Y)));
        return [.. spots.Concat(pads).Where(pair => pair.Item2.X is not null).Select(pair => (Place: pair.Item2, File: dossier.Model.Picture(pair.Picture))).Where(pair => pair.File.Found).Select(pair => pair.Place with { Sha256 = pair.File.Sha256 })];
    }

    private static Dictionary<string, BookPoint> PointsOf(List<Place> places, List<BookPage> pages)
    {
        var points = new Dictionary<string, BookPoint>(StringComparer.Ordinal);
        foreach (var place in places)
        {
            if (pages.Find(page => page.Picture.Sha256 == place.Sha256) is not { } page) continue;
            var (x, y) = page.At(place.X!.Value, place.Y!.Value);
            // The newest place of a name counts.
            points[place.Name] = new(place.Name, place.Says, place.Pad, x, y, page == pages[^1] && pages.Count > 1);
        }

        return points;
    }

    private static (List<BookString> Strings, int Loose) StringsOf(OpenDossier dossier, Dictionary<string, BookPoint> points)
    {
        var strings = new List<BookString>();
        var loose = 0;
        var tags = new Dictionary<(double, double), int>();
        var rows = new Dictionary<(double, double, double, double), int>();
        foreach (var touch in dossier.Session.View.Live<TouchSighting>().Select(each => each.Value))
        {
            var (a, b) = (Find(points, touch.A), Find(points, touch.B));
            if (a is null && b is null)
            {
                loose++;
                continue;
            }

            var kind = Readings.Kind(touch);
            if (a is not null && b is not null && a != b)
            {
                var (from, to) = string.CompareOrdinal(a.Name, b.Name) <= 0 ? (a, b) : (b, a);
                var line = (from.X, from.Y, to.X, to.Y);
                var over = rows[line] = rows.GetValueOrDefault(line) + 1;
                strings.Add(new(touch.A.Text, touch.B.Text, Readings.Short(touch), kind, a.X, a.Y, b.X, b.Y, "", over - 1));
                continue;
            }

            var at = (a ?? b)!;
            var row = tags[(at.X, at.Y)] = tags.GetValueOrDefault((at.X, at.Y)) + 1;
            strings.Add(new(touch.A.Text, touch.B.Text, Readings.Short(touch), kind, at.X, at.Y, at.X + TagX, at.Y + ((row - 0.5) * TagY), a is null ? touch.A.Text : touch.B.Text, 0));
        }

        return (strings, loose);
    }

    // A pin that was not placed itself lies somewhere in its part.
    private static BookPoint? Find(Dictionary<string, BookPoint> points, TouchPoint point) =>
        points.TryGetValue(point.Text, out var found) ? found : point.Spot.Length > 0 && points.TryGetValue(point.Spot, out var spot) ? spot : null;

    private sealed record Place(string Sha256, string Name, string Says, bool Pad, double? X, double? Y);
}
