using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring.Shapes;

namespace Lidoff.Seeing.Boards;

/// <summary>
/// A board with its pictures lying on it. Its frame is seen from the top, in mm: that of the known places where there are two, else that of
/// the first picture, from that picture's upper corner at the board's left. Equal when it was made of equal pictures and places.
/// </summary>
public sealed class LaidBoard : IEquatable<LaidBoard>
{
    // A step for slopes, mm: far below any click, far above the last bits of a place.
    private const double Step = 1e-4;

    private readonly ValueList<PictureToLay> given;
    private readonly ValueList<KnownPlace> known;
    private readonly BoardJoint? joint;

    internal LaidBoard(IReadOnlyList<PictureToLay> given, IReadOnlyList<KnownPlace> known, ValueList<LeftOutPicture> leftOut)
    {
        (this.given, this.known, LeftOut) = ([.. given], [.. known], leftOut);
        (Pictures, Landmarks) = ([], []);
    }

    internal LaidBoard(IReadOnlyList<PictureToLay> given, IReadOnlyList<KnownPlace> known, ValueList<LeftOutPicture> leftOut, BoardJoint joint, PictureToLay? first, IReadOnlyList<int> contrary)
        : this(given, known, leftOut)
    {
        this.joint = joint;
        First = first?.Sha256;
        var report = new BoardReport(joint, first, contrary);
        Pictures = [.. Enumerable.Range(0, joint.Pictures.Count).Select(report.Picture).OrderBy(picture => picture.Sha256, StringComparer.Ordinal)];
        Landmarks = report.Landmarks();
    }

    /// <summary>Pictures that lie on it, in order of their hashes.</summary>
    public ValueList<LaidPicture> Pictures { get; }

    /// <summary>Landmarks on it, by name.</summary>
    public ValueList<LaidLandmark> Landmarks { get; }

    /// <summary>Pictures that could not be laid, in order of their hashes.</summary>
    public ValueList<LeftOutPicture> LeftOut { get; }

    /// <summary>Hash of the picture whose shift and turn are the board's; null where known places are.</summary>
    public string? First { get; }

    /// <summary>True when something tells a length: otherwise pictures lie on one another, but millimetres mean nothing.</summary>
    public bool ScaleKnown => joint?.ScaleKnown ?? false;

    /// <summary>The picture of a hash; null where it does not lie on this board.</summary>
    public LaidPicture? Picture(string sha256) => Pictures.FirstOrDefault(picture => picture.Sha256 == sha256);

    /// <summary>True when the picture was given for this board, laid or left out.</summary>
    public bool Concerns(string sha256) => given.Any(picture => picture.Sha256 == sha256);

    /// <summary>Where a place of a picture lies on the board, mm, with its doubt, mm².</summary>
    /// <param name="sha256">A picture that lies on it.</param>
    /// <param name="at">The place, px.</param>
    /// <param name="uPx">Standard uncertainty of each coordinate, px.</param>
    public (BoardPoint At, PictureSpread Spread) Place(string sha256, PicturePoint at, double uPx)
    {
        var view = View(sha256);
        var (place, slopes, byClick) = BoardSlopes.Place(Solution.State.Views[view], at);
        var (x, y) = (Row(view, i => slopes[0, i]), Row(view, i => slopes[1, i]));
        return (new(place.X, place.Y), Sum(Spread(x, y), byClick.Carry(PictureSpread.Round(uPx))));
    }

    /// <summary>Where a place of one picture shows in another.</summary>
    /// <param name="from">Hash of the picture it was seen in.</param>
    /// <param name="at">Where, px.</param>
    /// <param name="uPx">Standard uncertainty of each coordinate there, px.</param>
    /// <param name="to">Hash of another picture.</param>
    public CarriedPoint Carry(string from, PicturePoint at, double uPx, string to)
    {
        Guard.That(from != to, "two different pictures");
        var (first, second) = (View(from), View(to));
        var (place, slopes, byClick) = BoardSlopes.Place(Solution.State.Views[first], at);
        var view = Solution.State.Views[second];
        var (byView, byPlace) = view.Slopes(place);
        var x = Joined(Row(first, i => (byPlace.XX * slopes[0, i]) + (byPlace.XY * slopes[1, i])), Row(second, i => byView[0, i]));
        var y = Joined(Row(first, i => (byPlace.YX * slopes[0, i]) + (byPlace.YY * slopes[1, i])), Row(second, i => byView[1, i]));
        return new(view.Show(place), Sum(Spread(x, y), byClick.Then(byPlace).Carry(PictureSpread.Round(uPx))));
    }

    /// <summary>The length on the board between two different places of a picture.</summary>
    /// <param name="sha256">A picture that lies on it.</param>
    /// <param name="from">One end, px.</param>
    /// <param name="to">The other.</param>
    /// <param name="uPx">Standard uncertainty of each coordinate of an end, px.</param>
    public BoardLength Length(string sha256, PicturePoint from, PicturePoint to, double uPx)
    {
        Guard.That(from != to, "two different places");
        Guard.That(ScaleKnown, "a board with a known length");
        var number = View(sha256);
        var view = Solution.State.Views[number];
        var (mm, slopes) = BoardSlopes.Length(view, from, to);
        var (a, b) = (BoardSlopes.Place(view, from), BoardSlopes.Place(view, to));
        var (x, y) = ((b.Place.X - a.Place.X) / mm, (b.Place.Y - a.Place.Y) / mm);
        var click = Along(a.ByClick, x, y) + Along(b.ByClick, x, y);
        var row = Row(number, i => slopes[i]);
        var shared = Solution.Between(row, row);
        return new(mm, Math.Sqrt(shared + (uPx * uPx * click)), Math.Sqrt(shared));
    }

    /// <summary>What places of a picture make on the board: mm, mm² or degrees; not a number where they make none.</summary>
    /// <param name="sha256">A picture that lies on it.</param>
    /// <param name="shape">Which figure they make.</param>
    /// <param name="points">The places, px.</param>
    /// <param name="uPx">Standard uncertainty of each coordinate, px.</param>
    /// <returns>Its value, its standard uncertainty, and the part of that which comes from how the picture lies.</returns>
    public (double Value, double U, double ShareU) Shape(string sha256, ShapeKind shape, IReadOnlyList<PicturePoint> points, double uPx)
    {
        Guard.That(ScaleKnown || shape == ShapeKind.Angle, "a board with a known length");
        var number = View(sha256);
        var view = Solution.State.Views[number];
        var places = points.Select(point => BoardSlopes.Place(view, point)).ToList();
        (double X, double Y)[] at = [.. places.Select(place => (place.Place.X, place.Place.Y))];
        var value = ShapeValue.Of(shape, at);
        if (!double.IsFinite(value)) return (double.NaN, double.NaN, double.NaN);
        var (slopes, click) = (new double[BoardView.Count], 0.0);
        foreach (var (place, (x, y)) in places.Zip(ShapeValue.Slopes(shape, at, Step)))
        {
            for (var i = 0; i < slopes.Length; i++) slopes[i] += (x * place.ByView[0, i]) + (y * place.ByView[1, i]);
            click += Along(place.ByClick, x, y);
        }

        var row = Row(number, i => slopes[i]);
        var shared = Solution.Between(row, row);
        return (value, Math.Sqrt(shared + (uPx * uPx * click)), Math.Sqrt(shared));
    }

    /// <inheritdoc/>
    public bool Equals(LaidBoard? other) => other is not null && given.Equals(other.given) && known.Equals(other.known);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as LaidBoard);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(given, known);

    private BoardSolution Solution => joint?.Solution ?? throw new InvalidOperationException("a board with pictures on it");

    private int View(string sha256)
    {
        var view = joint?.Pictures.ToList().FindIndex(picture => picture.Sha256 == sha256) ?? -1;
        Guard.That(view >= 0, "a picture that lies on the board");
        return view;
    }

    private BoardRow Row(int view, Func<int, double> slope)
    {
        int[] free = [.. Enumerable.Range(0, BoardView.Count).Where(i => Solution.Problem.Of(view, i) >= 0)];
        return new([.. free.Select(i => Solution.Problem.Of(view, i))], [.. free.Select(slope)], 0);
    }

    private PictureSpread Spread(BoardRow x, BoardRow y) => new(Solution.Between(x, x), Solution.Between(x, y), Solution.Between(y, y));

    private static BoardRow Joined(BoardRow a, BoardRow b) => new([.. a.Index, .. b.Index], [.. a.Slope, .. b.Slope], 0);

    private static PictureSpread Sum(PictureSpread a, PictureSpread b) => new(a.XX + b.XX, a.XY + b.XY, a.YY + b.YY);

    private static double Along(Jacobian map, double x, double y)
    {
        var (u, v) = ((x * map.XX) + (y * map.YX), (x * map.XY) + (y * map.YY));
        return (u * u) + (v * v);
    }
}
