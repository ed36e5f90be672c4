using Lidoff.Evidence.Pictures;
using Lidoff.Numbers;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring.Shapes;
using Lidoff.Seeing.Pictures;

namespace Lidoff.Seeing.Measuring.Edges;

/// <summary>
/// Edges near what was clicked in a picture, to a fraction of a pixel, with a standard uncertainty. What was clicked stays where nothing, or
/// more than one thing, is found near it.
/// </summary>
public sealed class PictureEdges
{
    // Room around the places for the band, the step's levels and the cubic.
    private const double Margin = 40;

    private readonly PixelField field;

    private PictureEdges(PixelField field) => this.field = field;

    /// <summary>Version of what is done here, kept beside what came of it.</summary>
    public const string Program = "edges 2";

    /// <summary>Reads what lies around some places. A picture that breaks off fails with a sentence.</summary>
    /// <param name="path">The file.</param>
    /// <param name="name">Its name for people.</param>
    /// <param name="header">Its header.</param>
    /// <param name="around">Everything that will be asked about.</param>
    /// <param name="clickPx">The largest standard uncertainty of a click, px.</param>
    public static Outcome<PictureEdges> Read(string path, string name, PictureHeader header, IReadOnlyCollection<PicturePoint> around, double clickPx)
    {
        Guard.NotNull(header);
        Guard.That(around is { Count: > 0 }, "at least one place");
        return PictureFile.Whole<PictureEdges>(name, header, () => new PictureEdges(PixelField.Read(path, header, around, Margin + (4 * clickPx))));
    }

    internal static PictureEdges Of(PixelField field) => new(field);

    /// <summary>The ends of a length: each is moved along it onto the edge that crosses it there.</summary>
    /// <param name="from">One end.</param>
    /// <param name="to">The other, at another place.</param>
    /// <param name="clickPx">Standard uncertainty of each, px.</param>
    public FittedLength Length(PicturePoint from, PicturePoint to, double clickPx)
    {
        Guard.That(from != to, "two places");
        return new(End(from, to, clickPx, EdgeSentences.From), End(to, from, clickPx, EdgeSentences.To));
    }

    /// <summary>The sides of a body by its corners, clicked one after the other around it.</summary>
    /// <param name="corners">Three or four of them; three of a rectangle are enough.</param>
    /// <param name="clickPx">Standard uncertainty of each, px.</param>
    public FittedBody Body(IReadOnlyList<PicturePoint> corners, double clickPx)
    {
        Guard.NotNull(corners);
        Guard.That(corners.Count is 3 or 4 && corners.Distinct().Count() == corners.Count, "three or four corners, each another place");
        var (at, doubt) = FittedBody.Around(corners, clickPx);
        var (a, b, c) = (at[0], at[1], at[2]);
        var clockwise = ((b.X - a.X) * (c.Y - b.Y)) - ((b.Y - a.Y) * (c.X - b.X)) > 0;
        var shorter = Math.Min(a.DistanceTo(b), b.DistanceTo(c));
        var (sides, lines, common) = (new FittedSide[4], new (PicturePoint From, PicturePoint To)[4], new double[4]);
        for (var i = 0; i < 4; i++)
        {
            var (first, last) = clockwise ? (i, (i + 1) % 4) : ((i + 1) % 4, i);
            var track = EdgeTrack.Side(at[first], at[last], doubt[first], doubt[last]);
            var found = EdgeSearch.Find(field, track, Math.Max(doubt[first], doubt[last]), 0.2 * shorter, EdgeSentences.Side(i));
            var length = at[first].DistanceTo(at[last]);
            if (found.Line is not { } line)
            {
                sides[i] = FittedBody.Stayed(doubt[first], doubt[last], found.Trouble);
                lines[i] = (at[i], at[(i + 1) % 4]);
                continue;
            }

            common[i] = line.CommonPx;
            sides[i] = new(line.At(track, length / 2), found.UPx, line.Support, line.BlurPx, "");
            lines[i] = (track.At(0, line.At(track, 0)), track.At(length, line.At(track, length)));
        }

        PicturePoint[] meet = [.. Enumerable.Range(0, 4).Select(i => Meet(lines[(i + 3) % 4], lines[i]) ?? at[i])];
        return new([.. meet], [.. sides], Across(meet, sides, common, 3, 1), Across(meet, sides, common, 0, 2));
    }

    /// <summary>A circle by places clicked on it.</summary>
    /// <param name="points">Three or more, not on one line.</param>
    /// <param name="clickPx">Standard uncertainty of each, px.</param>
    public FittedCircle Circle(IReadOnlyList<PicturePoint> points, double clickPx)
    {
        Guard.NotNull(points);
        Guard.That(points.Count >= 3, "three places or more");
        if (ShapeValue.CircleThrough([.. points.Select(point => (point.X, point.Y))]) is not var (x, y, radius)) return Stayed(points, clickPx, EdgeSentences.TooShort(EdgeSentences.Circle));
        var track = EdgeTrack.Circle(new(x, y), radius, clickPx, points.Count);
        var found = EdgeSearch.Find(field, track, clickPx, 0.4 * radius, EdgeSentences.Circle);
        if (found.Line is not { } line) return Stayed(points, clickPx, found.Trouble);
        var grown = radius + line.Coefficients[0];
        // A picture of a circle at a slant is an ellipse: its places are given one by one, not by radius and middle.
        const int places = 24;
        PicturePoint[] on = [.. Enumerable.Range(0, places).Select(i => track.At(track.To * i / places, line.At(track, track.To * i / places)))];
        return new(new(x + line.Coefficients[1], y + line.Coefficients[2]), grown, found.UPx, line.Coefficients[0], [.. on], found.UPx * Math.Sqrt(places), "");
    }

    private static FittedCircle Stayed(IReadOnlyList<PicturePoint> points, double clickPx, string trouble) => new(points[0], 0, clickPx, 0, [.. points], clickPx, trouble);

    private FittedEnd End(PicturePoint end, PicturePoint other, double clickPx, string name)
    {
        var length = end.DistanceTo(other);
        var track = EdgeTrack.End(end, other, clickPx);
        var found = EdgeSearch.Find(field, track, clickPx, 0.25 * length, name);
        // An end that stays may lie anywhere in the width of what it was clicked on.
        if (found.Line is not { } line) return new(end, Together(clickPx, EdgeWidth.Doubt(field, end, other, clickPx), 0), 0, found.Trouble);
        var shift = line.At(track, 0);
        return new(track.At(0, shift), found.UPx, shift, "");
    }

    private static FittedLength Across(PicturePoint[] corners, FittedSide[] sides, double[] common, int from, int to)
    {
        var (a, b) = (Middle(corners[from], corners[(from + 1) % 4]), Middle(corners[to], corners[(to + 1) % 4]));
        return new(Of(a, from), Of(b, to));

        // What both sides share moves both ends outwards or both inwards: as of two independent ends it is √2 as large.
        FittedEnd Of(PicturePoint at, int side) => new(at, Together(sides[side].UPx, common[side], 0), sides[side].OffsetPx, sides[side].Trouble);
    }

    private static PicturePoint? Meet((PicturePoint From, PicturePoint To) one, (PicturePoint From, PicturePoint To) other)
    {
        var (ax, ay, bx, by) = (one.To.X - one.From.X, one.To.Y - one.From.Y, other.To.X - other.From.X, other.To.Y - other.From.Y);
        var area = (ax * by) - (ay * bx);
        if (Math.Abs(area) < 1e-9) return null;
        var t = (((other.From.X - one.From.X) * by) - ((other.From.Y - one.From.Y) * bx)) / area;
        return new(one.From.X + (t * ax), one.From.Y + (t * ay));
    }

    private static PicturePoint Middle(PicturePoint a, PicturePoint b) => new((a.X + b.X) / 2, (a.Y + b.Y) / 2);

    private static double Together(double a, double b, double c) => Math.Sqrt((a * a) + (b * b) + (c * c));
}
