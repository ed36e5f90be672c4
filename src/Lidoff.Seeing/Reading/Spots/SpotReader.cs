using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Reading.Engine;
using Lidoff.Seeing.Reading.Finding;
using Lidoff.Seeing.Reading.Networks;

namespace Lidoff.Seeing.Reading.Spots;

/// <summary>
/// Reads the mark of a spot in the pictures that show it: finds the body in each, scans it, and combines what was scanned. The networks must be
/// there. The pictures it looked through last are kept, since many spots lie in one; not to be used from two threads at once.
/// </summary>
public sealed class SpotReader(IReadingNetworks networks)
{
    // An outline follows the body's edge, where print may begin; a little around it costs nothing.
    private const double Around = 0.04;

    // A body found in a box that was drawn around it is as large as the box or smaller, and no speck in it. Choices of ours.
    private const double LeastOfBox = 0.2;
    private const double MostOfBox = 1.15;

    // Sums of line probabilities this near to the best one are no difference. A choice of ours.
    private const double AboutAsWell = 0.9;

    // What takes up that much of a picture may be a board, whose text is strewn over it. A choice of ours.
    private const double Large = 0.3;

    // Where no body is seen at all, a single sign may be anything. A choice of ours.
    private const int LeastOfAMark = 3;

    // How wide around a click text is looked for first, px, and how much wider each next time; as bodies are.
    private const double FirstLook = 160;
    private const double Wider = 1.8;

    // In heights of a line: room that the finder wants around a mark, and how long its region is at least. Choices of ours.
    private const double Room = 1.2;
    private const double LeastAlong = 10;

    // A line less likely right than this is no proof that text stands there. A choice of ours.
    private const double Legible = 0.1;

    // What is read that doubtfully may be no text at all but colour bands. A choice of ours.
    private const double Doubtful = 0.3;

    // A board's overview and the close-up at hand.
    private const int MostKept = 2;

    private readonly MarkReader reader = new(networks);
    private readonly List<(string Path, GreyPyramid Grey)> kept = [];

    /// <summary>Scans a spot in one picture; a fault says that its body was not found there, or why the picture cannot be read.</summary>
    public Outcome<SpotScan> Scan(string spot, SpotPicture picture)
    {
        Guard.NotNull(picture);
        if (picture.Outline is { } outline)
        {
            var around = outline.Grown(Around * Math.Max(outline.Width, outline.Height));
            return In(picture, around, GreyPyramidFile.Read(picture.Path, picture.Name, picture.Header, around));
        }

        var seen = Whole(picture);
        if (picture.Box is { } box) return seen.Then(whole => Seen(picture, Within(reader.Body(whole, box.Middle), box), whole));
        return seen.Then(whole => reader.Body(whole, picture.At!.Value) switch
        {
            { } body when picture.Others.Any(body.Holds) => Under(picture, whole, spot, ReadingSentences.BoardNotBody(spot, picture.Name)),
            { } body => Seen(picture, body, whole).Then(scan => IsLarge(body, picture) && scan.Read.Lines.Count > 0 && !IsOneMark(scan) ? Under(picture, whole, spot, ReadingSentences.BoardNotBody(spot, picture.Name)) : scan),
            _ => Filling(picture, whole) is { Ok: true } filled ? filled : Under(picture, whole, spot, ReadingSentences.NoBody(spot, picture.Name)),
        });
    }

    /// <summary>Makes one reading of scans of one mark: those that have a line in common are combined, the others left out and told. Where none succeeded, all their faults.</summary>
    /// <param name="spot">What the mark stands on.</param>
    /// <param name="pictures">The pictures that show it.</param>
    /// <param name="scans">What became of each of them, in their order.</param>
    /// <param name="unopened">Faults of pictures that could not be opened; one picture or fault at least.</param>
    /// <param name="program">Version of the program.</param>
    public Outcome<ReadingSighting> Weigh(string spot, IReadOnlyList<SpotPicture> pictures, IReadOnlyList<Outcome<SpotScan>> scans, IReadOnlyList<Fault> unopened, string program)
    {
        List<Fault> faults = [.. Guard.NotNull(scans).SelectMany(scan => scan.Faults), .. Guard.NotNull(unopened)];
        Guard.That(scans.Count == Guard.NotNull(pictures).Count && scans.Count + faults.Count > 0, "a scan for each picture, and one picture or fault at least");
        var scanned = scans.Where(scan => scan.Ok).Select(scan => scan.Value).ToList();
        if (scanned.Count == 0) return Outcome<ReadingSighting>.Failed(faults);
        var reading = Combine(spot, scanned, program);
        return reading with
        {
            Besides = [.. pictures.Select(picture => picture.Sha256).Except(reading.Pictures, StringComparer.Ordinal)],
            Says = [.. reading.Says, .. faults.Select(fault => fault.Say)],
        };
    }

    private ReadingSighting Combine(string spot, List<SpotScan> scans, string program)
    {
        var legible = BestFirst(scans.Where(scan => scan.Read.Lines.Count > 0));
        if (legible.Count == 0) legible = [scans[0]];
        var (read, says) = (legible[0].Read, new List<string>());
        var used = legible.Take(1).ToList();
        foreach (var scan in legible.Skip(1))
        {
            if (MarkCombining.Of([.. used.Append(scan).Select(each => each.Mark)], networks.LineTemperature).TryValue(out var both))
            {
                (read, used) = (both with { Says = legible[0].Read.Says }, [.. used, scan]);
            }
            else
            {
                says.Add(ReadingSentences.LeftOut(scan.Picture.Name, ReadingSentences.OtherMark));
            }
        }

        says.AddRange(used.Select(scan => scan.Says).Where(each => each.Length > 0));
        says.AddRange(scans.Except(legible).Select(scan => ReadingSentences.LeftOut(scan.Picture.Name, ReadingSentences.NothingRead)));
        var sighting = ReadingSighting.Of(spot, used.ConvertAll(scan => scan.Picture.Sha256), used[0].Region, read, networks, program);
        sighting = sighting with { Says = [.. sighting.Says, .. says] };
        return sighting.P < Doubtful ? SpotBands.Instead(sighting, scans) : sighting;
    }

    // The one that reads best says how the mark lies; of those that read about as well, the one that shows it largest.
    private static List<SpotScan> BestFirst(IEnumerable<SpotScan> legible)
    {
        var sums = legible.Select(scan => (Scan: scan, Sum: scan.Read.Lines.Sum(line => line.Reading.P))).OrderByDescending(each => each.Sum).ToList();
        var well = sums.TakeWhile(each => each.Sum >= AboutAsWell * sums[0].Sum).OrderByDescending(each => each.Scan.Region.Width * each.Scan.Region.Height);
        return [.. well.Concat(sums.SkipWhile(each => each.Sum >= AboutAsWell * sums[0].Sum)).Select(each => each.Scan)];
    }

    private Outcome<GreyPyramid> Whole(SpotPicture picture)
    {
        if (kept.FindIndex(each => each.Path == picture.Path) is >= 0 and var at)
        {
            var found = kept[at];
            kept.RemoveAt(at);
            kept.Add(found);
            return found.Grey;
        }

        return GreyPyramidFile.Read(picture.Path, picture.Name, picture.Header, All(picture)).Then(grey =>
        {
            if (kept.Count == MostKept) kept.RemoveAt(0);
            kept.Add((picture.Path, grey));
            return grey;
        });
    }

    private static PictureRegion Within(PictureRegion? found, PixelBox box) =>
        found is { } body && body.Width * body.Height is var area && area >= LeastOfBox * box.Width * box.Height && area <= MostOfBox * box.Width * box.Height
            ? body : PictureRegion.Box(box.X, box.Y, box.Width, box.Height);

    // A picture that is held as large as it is holds every part of it; of a larger one the part is read by itself.
    private Outcome<SpotScan> Seen(SpotPicture picture, PictureRegion region, GreyPyramid whole) =>
        In(picture, region, Math.Max(picture.Header.Width, picture.Header.Height) <= GreyPyramidFile.LongSide ? whole : GreyPyramidFile.Read(picture.Path, picture.Name, picture.Header, region));

    private Outcome<SpotScan> In(SpotPicture picture, PictureRegion region, Outcome<GreyPyramid> held) => PictureReading.Fits(picture.Name, picture.Header, region) is { } fault ? fault : held.Then<SpotScan>(grey =>
    {
        var mark = reader.Scan(grey, region);
        var read = reader.Weigh(mark);
        return new SpotScan(picture, region, mark with { Lines = [.. mark.Lines.Where(piece => read.Lines.Any(line => line.Region.Holds(piece.Outline.Middle)))] }, read);
    });

    // A close picture is all body: then the whole of it is read, where what stands there is one block of text and nobody else was pointed at.
    private Outcome<SpotScan> Filling(SpotPicture picture, GreyPyramid grey)
    {
        var none = ReadingSentences.NoBody("", picture.Name);
        if (picture.Others.Count > 0) return none;
        var all = All(picture);
        var sheet = FinderSheet.Of(grey, all);
        var (x, y) = all.Inside(picture.At!.Value);
        BodyFinder.Find(networks.Bodies(sheet), new((sheet.ValidWidth / 2.0) + (x / sheet.Step), (sheet.ValidHeight / 2.0) + (y / sheet.Step)), out var cut);
        return cut ? In(picture, all, grey).Then(scan => IsOneMark(scan) && IsAMark(scan, "") ? scan : (Outcome<SpotScan>)none) : none;
    }

    // Where no body shows, or a board, what hangs together under the click itself is the mark that was meant: from close up to the whole picture.
    private Outcome<SpotScan> Under(SpotPicture picture, GreyPyramid whole, string spot, Fault none)
    {
        var at = picture.At!.Value;
        var most = (double)Math.Max(picture.Header.Width, picture.Header.Height);
        for (var side = Math.Min(most, FirstLook); ; side = Math.Min(most, side * Wider))
        {
            var window = new PictureRegion(at, side, side, 0);
            var sheet = FinderSheet.Of(whole, window);
            var lines = sheet.IsEven ? [] : LineFinder.Find(networks.Find(sheet)).Select(line => sheet.ToPicture(line.Outline)).ToList();
            // What runs out of the window is looked at from farther away; what others were pointed at in is theirs.
            if (TextBlock.Under(lines, at) is var (around, height) && (side >= most || around.Grown(height).Corners.All(window.Holds)))
            {
                if (picture.Others.Any(around.Holds)) return none;
                var roomy = around.Grown(Math.Max(Room * height, ((LeastAlong * height) - Math.Max(around.Width, around.Height)) / 2));
                return Seen(picture, roomy, whole).Then(scan => IsUnder(scan, at) && IsAMark(scan, spot) ? scan with { Says = ReadingSentences.UnderTheClick(picture.Name) } : (Outcome<SpotScan>)none);
            }

            if (side >= most) return none;
        }
    }

    // What could be read lies there, and not beside something that only looked like text.
    private static bool IsUnder(SpotScan scan, PicturePoint at) => TextBlock.Under([.. scan.Read.Lines.Where(line => line.Reading.P >= Legible).Select(line => line.Region)], at) is not null;

    // Designators stand on the board beside their parts.
    private static bool IsAMark(SpotScan scan, string spot) => string.Concat(scan.Read.Lines.Select(line => line.Reading.Text)) is var text && text.Count(letter => letter != '?') >= LeastOfAMark && text != spot;

    private static PictureRegion All(SpotPicture picture) => PictureRegion.Box(0, 0, picture.Header.Width, picture.Header.Height);

    private static bool IsLarge(PictureRegion body, SpotPicture picture) => body.Width * body.Height >= Large * picture.Header.Width * picture.Header.Height;

    private static bool IsOneMark(SpotScan scan) => scan.Read.Lines.Count > 0
        && TextBlock.IsOne([.. scan.Read.Lines.Select(line => line.Region)], scan.Picture.At!.Value, All(scan.Picture));
}
