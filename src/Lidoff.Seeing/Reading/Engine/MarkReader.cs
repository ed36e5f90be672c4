using Lidoff.Numbers;
using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Reading.Finding;
using Lidoff.Seeing.Reading.Lattices;
using Lidoff.Seeing.Reading.Networks;

namespace Lidoff.Seeing.Reading.Engine;

/// <summary>
/// Reads a mark in a region of a picture: finds its lines, closer up where they are small, decides which way up they are by the vote of their
/// directions and, where that is not clear, by reading both ways, and reads each line once.
/// </summary>
public sealed class MarkReader(IReadingNetworks networks)
{
    /// <summary>Most lines read at once.</summary>
    public const int MostLines = 200;

    /// <summary>Least px along a region's longer side.</summary>
    public const int LeastSide = 24;

    // Characters lower than this on the sheet are looked at closer, where that brings them nearer by a third at least.
    private const double SmallHeight = 22;
    private const double WorthCloser = 0.75;

    // A region on which no line is read with even odds is looked at again without its rim, where neighbours and bright ends draw the eye, then coarser: in
    // small crops enlarged to the sheet letters are blurs. Shares of the region's shorter side, and of the sheet.
    private static readonly (double Rim, double Coarser)[] Again = [(0.1, 1), (0, 0.7), (0, 0.5)];
    private const double EvenOdds = 0.5;

    // One character beside a longer line is more often an emblem than text unless it is read as surely as this. Common practice, no source.
    private const double SureAlone = 0.9;
    private const int LongBeside = 3;

    // A vote below this is no decision: then both ways are read.
    private const double ClearVote = 0.6;

    // Read one way less than this much of what is read the other way, the way up is clear.
    private const double ClearlyLess = 0.25;

    // A whole reading without a single likely symbol is none below this. A choice of ours.
    private const double LeastOfNoise = 0.05;

    /// <summary>Looks at a region and runs the reader along its lines.</summary>
    /// <param name="picture">Brightness of the picture.</param>
    /// <param name="region">Where to look.</param>
    /// <param name="upright">True: the text runs along the region's width; no turn is looked for.</param>
    public ScannedMark Scan(GreyPyramid picture, PictureRegion region, bool upright = false)
    {
        var best = Scan(picture, region, upright, 1);
        if (IsTold(best)) return best;
        foreach (var (rim, coarser) in Again)
        {
            var again = Scan(picture, region.Grown(-rim * Math.Min(region.Width, region.Height)), upright, coarser);
            if (again.Found > 0 && Legibility(again.Lines) > Legibility(best.Lines)) best = again;
        }

        return best;
    }

    private ScannedMark Scan(GreyPyramid picture, PictureRegion region, bool upright, double scale)
    {
        Guard.NotNull(picture);
        var sheet = FinderSheet.Of(picture, region, scale);
        var maps = networks.Find(sheet);
        // The networks never saw a picture without any difference in it; there is nothing to find.
        var found = sheet.IsEven ? [] : LineFinder.Find(maps);
        // All of the body shows from here alone: dots and emblems may lie beside what is looked at closer.
        var (wide, wideMaps) = (sheet, maps);
        if (Closer(sheet, found) is { } near)
        {
            var nearSheet = FinderSheet.Of(picture, near);
            var nearMaps = networks.Find(nearSheet);
            var again = LineFinder.Find(nearMaps);
            // What shows only from afar stays as it was seen from there.
            if (again.Count >= found.Count) (sheet, maps, found) = (nearSheet, nearMaps, again);
        }

        var layout = MarkLayout.Of(found, upright);
        var lines = Read(picture, sheet, layout);
        IReadOnlyList<ScannedLine>? otherwise = null;
        var turn = layout.Turn;
        // The reader reads nothing in a line that stands on its head: where it can read half of the lines or fewer, the vote was wrong or the mark is worn.
        if (!upright && layout.Lines.Count > 0 && (layout.Vote < ClearVote || lines.Count(IsEmpty) * 2 >= lines.Count))
        {
            var round = Read(picture, sheet, layout.TurnedRound());
            var (asIs, turned) = (Legibility(lines), Legibility(round));
            var other = turned > asIs ? lines : round;
            if (turned > asIs) (lines, turn) = (round, layout.TurnedRound().Turn);
            if (Math.Min(asIs, turned) > ClearlyLess * Math.Max(asIs, turned)) otherwise = other;
        }

        var dot = wide.IsEven ? null : Dot(sheet, maps) ?? Dot(wide, wideMaps);
        var texts = lines.Where(line => !IsEmpty(line)).Select(line => wide.OnSheet(line.Outline)).ToList();
        var around = BodyFinder.Find(wideMaps, new(wide.ValidWidth / 2.0, wide.ValidHeight / 2.0), out var cut) is { } whole && !cut ? wide.ToPicture(whole) : region;
        return new(lines, upright ? region.Turn : Angles.Whole(turn + sheet.Region.Turn), otherwise, dot?.At, layout.Lines.Count, sheet.Region)
        {
            DotP = dot?.P ?? 0,
            Body = around,
            Emblems = wide.IsEven ? [] : [.. EmblemFinder.Find(wide, wideMaps, wide.OnSheet(around), texts).Select(emblem => emblem with { Outline = wide.ToPicture(emblem.Outline) })],
        };
    }

    private static FoundDot? Dot(FinderSheet sheet, FinderMaps maps) => BodyFinder.Dot(maps) is { } dot ? dot with { At = sheet.ToPicture(dot.At.X, dot.At.Y) } : null;

    /// <summary>The body around a place of a picture, from close up to the whole picture; null where none is found.</summary>
    public PictureRegion? Body(GreyPyramid picture, PicturePoint place)
    {
        var (left, top, width, height) = Guard.NotNull(picture).Holds;
        var most = Math.Max(width, height);
        for (var side = Math.Min(most, 160.0); ; side = Math.Min(most, side * 1.8))
        {
            // Straight lines between pixels: a small body's edge stands out more (on the demo's board one of 54 × 43 px is found so and not by a cubic).
            var sheet = FinderSheet.Of(picture, new(place, side, side, 0), cubic: false);
            var middle = new PicturePoint(sheet.ValidWidth / 2.0, sheet.ValidHeight / 2.0);
            if (BodyFinder.Find(networks.Bodies(sheet), middle, out _) is { } body)
            {
                var closer = FinderSheet.Of(picture, sheet.ToPicture(body).Grown(0.15 * Math.Max(body.Width, body.Height) * sheet.Step), cubic: false);
                var again = BodyFinder.Find(networks.Bodies(closer), new(closer.ValidWidth / 2.0, closer.ValidHeight / 2.0), out var cut);
                return again is { } tight && !cut ? closer.ToPicture(tight) : sheet.ToPicture(body);
            }

            if (side >= most) return null;
        }
    }

    /// <summary>Weighs what was scanned.</summary>
    public ReadMark Weigh(ScannedMark scanned, bool upright = false)
    {
        Guard.NotNull(scanned);
        var pieces = Weighed(scanned.Lines);
        var alone = pieces.Where(line => IsAlone(line, pieces)).ToList();
        var lines = MarkRows.Of(pieces.Except(alone));
        var otherwise = scanned.Otherwise is { } other ? MarkRows.Of(Weighed(other)) : [];
        return new(upright ? 0 : TurnOf(scanned.Turn), [.. lines], [.. otherwise], scanned.Dot, [.. Says(scanned, lines.Count)])
        {
            PinOne = scanned.Dot is { } dot ? PinOne.Of(dot, scanned.DotP, scanned.Body, TurnOf(scanned.Turn)) : null,
            Emblems = [.. scanned.Emblems.Concat(alone.Where(line => !scanned.Emblems.Any(emblem => emblem.Outline.Holds(line.Region.Middle))).Select(line => new FoundEmblem(line.Region, 1 - line.Reading.P))).Take(EmblemFinder.Most)],
        };
    }

    private static bool IsTold(ScannedMark scanned) => scanned.Lines.Any(line => !IsEmpty(line) && Elementary.Exp(line.Lattice.Likeliest[0].LogP) >= EvenOdds);

    // The last character of a row stands behind a gap often enough; an emblem stands before it.
    private static bool IsAlone(ReadLine line, List<ReadLine> all) =>
        line.Reading.Readings[0].Text.Length == 1 && line.Reading.P < SureAlone
        && all.Any(each => each.Reading.Readings[0].Text.Length >= LongBeside) && !all.Any(each => each != line && MarkRows.Follows(each, line));

    /// <summary>Clockwise turn in degrees that makes text of a direction upright, 0 to below 360, to a tenth.</summary>
    internal static double TurnOf(double direction)
    {
        var turn = Math.Round(-direction * 180 / Math.PI, 1);
        return turn < 0 ? turn + 360 : turn == 0 ? 0 : turn;
    }

    private List<ReadLine> Weighed(IReadOnlyList<ScannedLine> lines) =>
        [.. lines.Select(line => new ReadLine(LineReading.Of([line.Lattice], networks.LineTemperature), line.Outline, 0)).Where(line => !line.Reading.IsEmpty && !IsNoise(line.Reading))];

    // Grain and bars read as symbols of which none is likelier than not; a worn mark of look-alikes does too, but its likeliest whole reading stays well above this.
    private static bool IsNoise(LineReading reading) => reading.P < LeastOfNoise && reading.Places.All(place => place.Extra || place.Top[0].P < ReadPlace.Guess);

    private static IEnumerable<string> Says(ScannedMark scanned, int read)
    {
        if (scanned.Found == 0) yield return ReadingSentences.NoText;
        else if (read == 0) yield return ReadingSentences.NothingLegible(scanned.Found);
        if (scanned.Found > MostLines) yield return ReadingSentences.TooManyLines(scanned.Found, MostLines);
        else if (scanned.Found > MostOfAPart) yield return ReadingSentences.ManyLines(scanned.Found);
        if (scanned.Otherwise is not null) yield return ReadingSentences.EitherWayUp;
    }

    // Marks have up to half a dozen lines (from memory); a kind of evidence takes as many.
    private const int MostOfAPart = 20;

    private List<ScannedLine> Read(GreyPyramid picture, FinderSheet sheet, MarkLayout layout)
    {
        var outlines = layout.Lines.Take(MostLines).Select(sheet.ToPicture).ToList();
        var lattices = networks.Score([.. outlines.Select(outline => LineStrip.Of(picture, outline))]);
        return [.. outlines.Zip(lattices, (outline, lattice) => new ScannedLine(outline, lattice))];
    }

    /// <summary>A smaller region around all lines, where they are small on the sheet and leave much of it empty.</summary>
    private static PictureRegion? Closer(FinderSheet sheet, IReadOnlyList<FoundLine> found)
    {
        if (found.Count == 0) return null;
        var heights = found.Select(line => line.Outline.Height).Order().ToList();
        if (heights[heights.Count / 2] >= SmallHeight) return null;
        var margin = 1.5 * heights[^1];
        var corners = found.SelectMany(line => line.Outline.Corners).ToList();
        var (left, right) = (corners.Min(c => c.X) - margin, corners.Max(c => c.X) + margin);
        var (top, foot) = (corners.Min(c => c.Y) - margin, corners.Max(c => c.Y) + margin);
        var side = Math.Max(right - left, foot - top);
        if (side > WorthCloser * Math.Max(sheet.ValidWidth, sheet.ValidHeight)) return null;
        return sheet.ToPicture(PictureRegion.Box(left, top, right - left, foot - top));
    }

    private static bool IsEmpty(ScannedLine line) => line.Lattice.Likeliest[0].Text.Length == 0;

    // How much surer than a guess its characters are, added up: on other readers such a sum told up from down better than a mean did, and a
    // place that is no more than a guess must not count for it. The other half is a choice of ours.
    private static double Legibility(IReadOnlyList<ScannedLine> lines) =>
        lines.Sum(line => LineReading.Of([line.Lattice]).Places.Where(place => !place.Extra).Sum(place => place.Top[0].P - ReadPlace.Guess));
}
